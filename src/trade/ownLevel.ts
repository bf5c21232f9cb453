/** For a level that is ours, not the trade's: said wherever something is held against it. */
export const OWN_LEVEL = 'Our own level, no source: set yours.';
