/** Said wherever a load figure is shown. The pull together is that of a light set. */
export const LOAD_CAUTION =
  'Load figures compare designs: set them against a reference design, best a bridge that has held. They guarantee nothing. Local rules, a qualified person and your own trials come first. Strings pull about 700 N together: wear eye protection, and slacken them before you cut them.';
