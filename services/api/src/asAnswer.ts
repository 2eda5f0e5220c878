// Of what may be anything, the mapped type would be an object without keys.
type ReadOnly<T> = unknown extends T ? T : { readonly [Key in keyof T]: ReadOnly<T[Key]> };

/**
 * What another package made, as the answer of a route: whatever the form of the answer names must be
 * there, compared where it is compiled. What may not be changed there may be sent, for it is only written out.
 */
export function asAnswer<Answer>(made: ReadOnly<Answer>): Answer {
  return made as Answer;
}
