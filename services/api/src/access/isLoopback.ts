import { isIPv4 } from 'node:net';

/** Whether only programs of this computer can reach the address (127.0.0.0/8, ::1, localhost). */
export function isLoopback(host: string): boolean {
  return host === 'localhost' || host === '::1' || (isIPv4(host) && host.startsWith('127.'));
}
