import specification from '../../demonstration.spec.json' with { type: 'json' };

/** A search to begin with: invented from end to end, and it says so. */
export const demonstration = {
  story:
    'Invented: a maker of pumps looks for a cast impeller that holds out in cold sea water, without cobalt, not heavier than steel, and for at most 17 EUR of pure elements a kilogram. Asked for is an alloy of five or six elements that bind one another only weakly and are alike in size, with enough valence electrons to favour the tough face-centred structure.',
  cautions: [
    'Story and prices are invented; no price here was quoted by anybody.',
    'The search says nothing about corrosion: whether an alloy lasts in sea water has to be measured.',
    'Prices are those of pure elements, without alloying, losses or melting.',
  ],
  specification,
};
