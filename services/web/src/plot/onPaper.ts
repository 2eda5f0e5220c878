import { createContext } from 'react';

/** Whether a figure is being drawn for a file: in the light colours on white, whatever the screen shows. */
export const OnPaper = createContext(false);
