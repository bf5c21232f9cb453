import type { Palette } from './palette.ts';

export type WoodColours = Pick<
  Palette,
  'edge' | 'draftEdge' | 'wood' | 'woodLight' | 'woodDark' | 'woodFresh'
>;

/** Colours of the woods of the list, oiled, by eye; edges stand out from each. Indian rosewood is the palette's own. */
const COLOURS: Readonly<Record<string, WoodColours>> = {
  'African ebony': {
    edge: '#7d7168',
    draftEdge: '#6a5f57',
    wood: '#302a27',
    woodLight: '#433b37',
    woodDark: '#191514',
    woodFresh: '#75665b',
  },
  'Honduras rosewood': {
    edge: '#331d16',
    draftEdge: '#643f31',
    wood: '#845948',
    woodLight: '#a8765d',
    woodDark: '#4b2e25',
    woodFresh: '#dfb694',
  },
  Cocobolo: {
    edge: '#2e150c',
    draftEdge: '#663222',
    wood: '#8c4b2c',
    woodLight: '#b5683e',
    woodDark: '#45231a',
    woodFresh: '#e2ab7a',
  },
  'African padauk': {
    edge: '#35130a',
    draftEdge: '#70291a',
    wood: '#963f26',
    woodLight: '#b75636',
    woodDark: '#642919',
    woodFresh: '#e29566',
  },
  Purpleheart: {
    edge: '#241220',
    draftEdge: '#4d2c43',
    wood: '#653a57',
    woodLight: '#805070',
    woodDark: '#402538',
    woodFresh: '#bb91ac',
  },
  'Sugar maple': {
    edge: '#5f4426',
    draftEdge: '#8a6a41',
    wood: '#bea88a',
    woodLight: '#cfbca2',
    woodDark: '#a08a6c',
    woodFresh: '#e8dbc5',
  },
  'Black walnut': {
    edge: '#24180f',
    draftEdge: '#4f3926',
    wood: '#604635',
    woodLight: '#7c5d46',
    woodDark: '#3d2b1f',
    woodFresh: '#bd9d80',
  },
};

/** What differs from the palette for a timber of this name; nothing for a name that isn't on the list. */
export function woodColours(timber: string): Partial<WoodColours> {
  return (Object.hasOwn(COLOURS, timber) && COLOURS[timber]) || {};
}
