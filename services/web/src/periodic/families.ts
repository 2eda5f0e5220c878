import type { Element } from '@tiegel/elements';

/** The tint of each family (styles/tokens.css); halogens and noble gases share that of the nonmetals. */
export const familyTints: Record<Element['family'], string> = {
  'alkali metal': 'alkali',
  'alkaline earth metal': 'earth',
  'transition metal': 'transition',
  'post-transition metal': 'poor',
  metalloid: 'metalloid',
  lanthanide: 'lanthanide',
  actinide: 'actinide',
  nonmetal: 'nonmetal',
  halogen: 'nonmetal',
  'noble gas': 'nonmetal',
};
