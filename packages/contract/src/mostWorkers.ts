/** How many scoring threads one process may be told to have, by WORKERS or --workers. */
export const mostWorkers = 1024;
