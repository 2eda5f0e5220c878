export interface PublishedAlloyView {
  composition: Record<string, number>;
  name: string;
  phases: string | null;
  process: string | null;
  source: string | null;
  doi: string[];
  own: boolean;
  import: number | null;
}

export interface MaterialView {
  name: string;
  contains: Record<string, number>;
  purity: number;
  price: number | null;
  currency: string | null;
  meltingTemperature: number | null;
  own: boolean;
  import: number | null;
}

export interface OwnColumnView {
  id: string;
  name: string;
  unit: string;
  mixing: 'mole' | 'mass' | 'volume';
  values: Record<string, number>;
}
