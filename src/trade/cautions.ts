import { WOODS } from './woods.ts';

/** What can hurt at the bench, in the words in which page, steps and papers all say it. */
export interface Caution {
  readonly title: string;
  readonly text: string;
}

/**
 * Dust limits and Chudnoff's Tropical Timbers of the World (USDA Agriculture Handbook 607, 1984) were read; the EU's
 * limit and the CITES notes were read in quotations; machines and strings are common practice.
 */
export const CAUTIONS = {
  dust: {
    title: 'Dust',
    text: 'Hardwood dust harms the lungs. Limits over eight hours: EU 2 mg/m³ (Directive 2017/2398), UK 3, US OSHA 15 in all and 5 respirable, NIOSH advises 1. Collect it at the tool and wear a mask.',
  },
  allergy: {
    title: 'Skin and lungs',
    text: 'Rosewoods, ebony, padauk and cocobolo can make you allergic (Chudnoff 1984).',
  },
  listed: {
    title: 'Listed woods',
    text: 'Dalbergia and some Guibourtia stand in CITES Appendix II, D. nigra in Appendix I. Finished parts of instruments are exempt in Appendix II (note 15), blanks not clearly. Check the current Appendices.',
  },
  machines: {
    title: 'Machines',
    text: 'Hold a small part in a fixture, never by hand, on a drill press, router, saw, sander or buffing wheel. Keep screws and clamps out of the cutter’s path, and the cutter within its rated speed.',
  },
  strings: {
    title: 'Strings',
    text: 'A steel string pulls as much as a bucket of water weighs, a set several times that. Wear eye protection, and slacken strings before cutting them.',
  },
  strength: {
    title: 'Strength',
    text: 'Strength figures are for comparing designs with each other, not a guarantee.',
  },
  first: {
    title: 'First of all',
    text: 'Local rules, the machine’s manual and a qualified person come before anything said here.',
  },
} as const satisfies Readonly<Record<string, Caution>>;

export type CautionId = keyof typeof CAUTIONS;

/** Said before the caution about listed woods where it is so. */
export const CHOSEN_IS_LISTED = 'The timber chosen is a Dalbergia.';

/** A caution as it is said of this timber. */
export function cautionFor(id: CautionId, timber: string): Caution {
  const { title, text } = CAUTIONS[id];
  return { title, text: id === 'listed' && isDalbergia(timber) ? `${CHOSEN_IS_LISTED} ${text}` : text };
}

/** Whether a timber of this name is a *Dalbergia*: one of the list, whatever its figures, or one that says so itself. */
export function isDalbergia(name: string): boolean {
  const plain = name.trim().toLowerCase();
  return (
    plain.includes('dalbergia') || WOODS.some((wood) => wood.dalbergia && wood.name.toLowerCase() === plain)
  );
}
