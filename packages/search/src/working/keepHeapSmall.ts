import { setFlagsFromString } from 'node:v8';

/**
 * Imported before all else. V8 takes what a computer of much memory would allow: the young
 * generation of every thread grows to 48 MB, and the old one by as much as it holds before it is
 * swept. Both flags are read each time a heap would grow, so they may be set while it runs.
 * Measured: figures in the README of services/api.
 */
setFlagsFromString('--semi-space-growth-factor=1');
setFlagsFromString('--heap-growing-percent=20');
