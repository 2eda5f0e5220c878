import { parseAlloy } from '@tiegel/elements';
import { expect, test } from 'vitest';
import { criterionVerdicts, dossierOf } from '../../src/index.ts';
import { facts } from '../fixtures/alloys.ts';

test.each(['CoCrFeMnNi', 'NbMoTaW', 'Al2CoCrFeNi'])(
  'the criteria say of %s what its dossier says',
  (text) => {
    const alloy = parseAlloy(text);
    const conditions = { annealTemperature: 900 };
    const asked = Object.entries(criterionVerdicts(facts, conditions)).map(([id, of]) => [id, of(alloy)]);
    expect(Object.fromEntries(asked)).toEqual(dossierOf(alloy, facts, conditions).criteria);
  },
);
