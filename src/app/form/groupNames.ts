import type { Group } from '../../design/fields.ts';

/** The groups of the form in the order of the bench, and what they are called. */
export const GROUP_NAMES: Readonly<Record<Group, string>> = {
  guitar: 'Guitar',
  action: 'Neck and action',
  strings: 'Strings',
  footprint: 'Footprint',
  underside: 'Underside',
  top: 'Top',
  saddle: 'Saddle',
  pins: 'Pins',
  timber: 'Timber',
  aim: 'Aim',
  limits: 'Limits',
};
