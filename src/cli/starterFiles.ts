import bittern from '../../public/starters/bittern.json';
import dunlin from '../../public/starters/dunlin.json';
import evenlode from '../../public/starters/evenlode.json';
import gannet from '../../public/starters/gannet.json';
import index from '../../public/starters/index.json';
import lapwing from '../../public/starters/lapwing.json';
import plover from '../../public/starters/plover.json';
import wagtail from '../../public/starters/wagtail.json';
import wharfe from '../../public/starters/wharfe.json';
import windrush from '../../public/starters/windrush.json';

/** A design to start from. */
export interface StarterFile {
  readonly file: string;
  readonly name: string;
  readonly about: string;
  readonly json: unknown;
}

/** Built in, since the package carries no public folder. */
const DESIGNS: Readonly<Record<string, unknown>> = {
  'bittern.json': bittern,
  'dunlin.json': dunlin,
  'evenlode.json': evenlode,
  'gannet.json': gannet,
  'lapwing.json': lapwing,
  'plover.json': plover,
  'wagtail.json': wagtail,
  'wharfe.json': wharfe,
  'windrush.json': windrush,
};

/** The starters in the index's order. */
export const STARTER_FILES: readonly StarterFile[] = index.map((entry) => ({
  ...entry,
  json: DESIGNS[entry.file],
}));
