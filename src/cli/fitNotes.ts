/** What must be said wherever set-backs and their residuals are shown. */
export const FIT_NOTES: readonly string[] = [
  'How firmly the ends hold a string (α) is fitted to common practice; no source settles it for steel. α = 1 is a lower bound, and set-backs you measured go before both.',
  'Core diameters are assumed unless you measured them: the slot’s angle moves by about 1.2° with them, for a light set.',
  'In a blind test with 32 listeners no significant difference was heard between straight, per-string and nut-and-saddle compensation (Mottola, Blind Listening Evaluation of Steel String Acoustic Guitar Compensation Strategies, abstract).',
];
