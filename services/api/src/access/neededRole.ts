import type { Role } from '@tiegel/contract';

const root = '/api/v1';

/** Whoever signs in has no token yet, and whoever watches over the service needs none. */
const forAnybody = new Set(['/health', '/ready', '/access']);

/** What is worked out from what is sent, and kept nowhere. */
const workedOut = new Set([
  'POST /charge',
  'POST /count',
  'POST /distributions',
  'POST /explain',
  'POST /imports/preview',
  'POST /screen',
  'POST /substitute',
  'POST /weighing',
]);

/** What an author writes. */
const written = new Set([
  'DELETE /melts/:id',
  'DELETE /melts/:id/attachments/:attachment',
  'PATCH /shortlists/:id',
  'POST /charge-sheets',
  'POST /melts',
  'POST /melts/:id/attachments',
  'POST /melts/:id/attachments/:attachment/restore',
  'POST /melts/:id/restore',
  'POST /searches',
  'POST /searches/:id/cancel',
  'POST /searches/:id/pause',
  'POST /searches/:id/resume',
  'POST /shortlists',
  'POST /shortlists/:id/pick',
  'PUT /melts/:id',
  'PUT /searches/:id/schedule',
]);

/**
 * The role that a route asks for; null: none, for pages and what anybody may ask. Reading is a reader's. What is
 * neither worked out nor written is a keeper's: so are data in force, and a route that nobody thought of here.
 *
 * @param url of the route, as it was registered; undefined where there is none
 */
export function neededRole(method: string, url: string | undefined): Role | null {
  if (url === undefined || !url.startsWith(`${root}/`)) return null;
  const path = url.slice(root.length);
  if (forAnybody.has(path)) return null;
  if (method === 'GET' || method === 'HEAD' || workedOut.has(`${method} ${path}`)) return 'reader';
  return written.has(`${method} ${path}`) ? 'author' : 'keeper';
}
