/** The refractory metals of groups 4 to 6, which make the bcc alloys that strength and ductility were studied on. */
export const refractoryElements = ['Cr', 'Hf', 'Mo', 'Nb', 'Ta', 'Ti', 'V', 'W', 'Zr'] as const;
