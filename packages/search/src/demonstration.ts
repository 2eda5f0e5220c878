/** A search to begin with: invented from end to end, and it says so. */
export const demonstration = {
  story:
    'Invented: a maker of pumps looks for a cast impeller that holds out in cold sea water, without cobalt, not heavier than steel, and for at most 17 EUR of pure elements a kilogram. Asked for is an alloy of five or six elements that bind one another only weakly and are alike in size, with enough valence electrons to favour the tough face-centred structure.',
  cautions: [
    'Story and prices are invented; no price here was quoted by anybody.',
    'The search says nothing about corrosion: whether an alloy lasts in sea water has to be measured.',
    'Prices are those of pure elements, without alloying, losses or melting.',
  ],
  specification: {
    version: 1,
    name: 'Cobalt-free impeller alloy',
    elements: {
      pool: ['Al', 'Cr', 'Cu', 'Fe', 'Mn', 'Mo', 'Ni', 'Ti', 'V'],
      require: ['Cr', 'Fe', 'Ni'],
      forbid: ['Co'],
    },
    components: { min: 5, max: 6 },
    fractions: {
      step: 5,
      min: 5,
      max: 35,
      each: { Al: { max: 15 }, Cr: { min: 15 }, Cu: { max: 10 }, Mo: { max: 10 } },
    },
    limits: [
      { quantity: 'density', max: 8.0 },
      { quantity: 'mixingEnthalpy', min: -15, max: 5 },
      { quantity: 'sizeMismatch', max: 6.6 },
      { quantity: 'valenceElectronConcentration', min: 7.6 },
      { quantity: 'cost', max: 17 },
    ],
    rank: [{ quantity: 'sizeMismatch', prefer: 'low' }],
    keep: 1000,
    keepPerSystem: 1,
  },
};
