import { problem } from '@tiegel/contract/terms';
import type { Configuration } from './configuration.ts';
import type { Server } from './parts.ts';

/**
 * Starts to listen and returns the address of the page. Throws server/address-in-use and
 * server/cannot-listen.
 */
export async function listen(app: Server, { host, port }: Configuration): Promise<string> {
  try {
    return await app.listen({ host, port });
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'EADDRINUSE') {
      throw problem(
        'server/address-in-use',
        { host, port, other: port < 65_535 ? port + 1 : port - 1 },
        '/PORT',
      );
    }
    throw problem('server/cannot-listen', { host, port, why: message }, '/HOST');
  }
}
