import { problem } from '@tiegel/contract/terms';
import type { FastifyInstance } from 'fastify';

/** From the moment the service begins to stop, every request is answered server/stopping. */
export function refuseWhileStopping(app: FastifyInstance): void {
  let stopping = false;
  app.addHook('preClose', async () => {
    stopping = true;
  });
  app.addHook('onRequest', async () => {
    if (stopping) throw problem('server/stopping');
  });
}
