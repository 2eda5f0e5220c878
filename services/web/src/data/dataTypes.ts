/** A column of one's own as GET /columns tells it. */
export interface OwnColumnView {
  id: string;
  name: string;
  unit: string;
  mixing: 'mole' | 'mass' | 'volume';
  values: Record<string, number>;
}
