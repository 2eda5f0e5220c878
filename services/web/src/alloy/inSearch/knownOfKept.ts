/** Why a limit or an expression has no value on a page: it is late, or of somebody's own columns, and its search alone has it. */
export const knownOfKept = 'the search has it of its kept ones only, under its own conditions';
