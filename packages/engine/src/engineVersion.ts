/** Changes whenever the same plan could yield another outcome; a plan of another version is refused. */
export const engineVersion = '5';
