import { STATUS_CODES } from 'node:http';
import type { Socket } from 'node:net';
import { fault } from '@tiegel/contract/terms';
import { problemBody } from './problemBody.ts';

/** What is no HTTP never becomes a request: it is answered on the bare connection, which then ends. */
export function answerUnreadable(error: Error, socket: Socket): void {
  if (!socket.writable) {
    socket.destroy(error);
    return;
  }
  const body = problemBody([fault('request/unreadable', { what: error.message })]);
  const text = JSON.stringify(body);
  const head = [
    `HTTP/1.1 ${body.status} ${STATUS_CODES[body.status]}`,
    'content-type: application/problem+json',
    `content-length: ${Buffer.byteLength(text)}`,
    'connection: close',
  ];
  socket.end(`${head.join('\r\n')}\r\n\r\n${text}`);
}
