import type { IncomingMessage, ServerResponse } from 'node:http';
import type { ZodTypeProvider } from '@fastify/type-provider-zod';
import type { Searches } from '@tiegel/search';
import type { ChargeSheets, Melts, Shortlists, Tokens } from '@tiegel/search/laboratory';
import type { MeltTable } from '@tiegel/store';
import type { FastifyBaseLogger, FastifyInstance, RawServerDefault } from 'fastify';
import type { AttachmentFiles } from './melts/attachmentFiles.ts';

/** What the service is made of; whoever opened a part closes it. */
export interface Parts {
  searches: Searches;
  shortlists: Shortlists;
  chargeSheets: ChargeSheets;
  melts: Melts;
  /** Files of melts: what is known of them, and what is in them. */
  attachments: { table: MeltTable; files: AttachmentFiles };
  /** Scoring threads present now; rejects when the carrier of work is out of reach. */
  workers: () => Promise<number>;
  /** Resolves when a write would begin at once, rejects with store/busy where another process keeps the database for some seconds. */
  writable: () => Promise<unknown>;
  /** Anyone who reaches the address may use it: told by /health, so that the page can warn. */
  openNetwork: boolean;
  /** Who may use the service, and what each may do; null: nobody is asked. */
  tokens: Pick<Tokens, 'holderOf'> | null;
  /** What a request may call the service beside the names of this computer; null: anything. */
  hostNames: readonly string[] | null;
  /** Folder of the built pages. */
  pages: string;
}

/** The server, with routes typed by their zod schemas. */
export type Server = FastifyInstance<
  RawServerDefault,
  IncomingMessage,
  ServerResponse,
  FastifyBaseLogger,
  ZodTypeProvider
>;
