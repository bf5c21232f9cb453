import regularAt from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import boldAt from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url';
import { createTypeface, type FontTypeface } from '../../sheets/typeface.ts';

/**
 * The typeface of the papers, from the same bytes for measuring, for the PDF and for the page: whatever fonts the
 * machine has, a sheet is seen as it is saved. Rejects when the fonts can't be had.
 */
export async function loadTypeface(): Promise<FontTypeface> {
  const [regular, bold] = await Promise.all([bytesAt(regularAt), bytesAt(boldAt)]);
  const typeface = unhurried(createTypeface(regular, bold));
  const faces = [
    new FontFace(typeface.family, regular),
    new FontFace(typeface.family, bold, { weight: 'bold' }),
  ];
  await Promise.all(faces.map((face) => face.load()));
  for (const face of faces) document.fonts.add(face);
  return typeface;
}

async function bytesAt(address: string): Promise<Uint8Array<ArrayBuffer>> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`The letters of the papers could not be loaded (${answer.status}).`);
  return new Uint8Array(await answer.arrayBuffer());
}

/** Widths that are kept; sheets say the same words at every redrawing, and numbers change. */
const MOST = 5000;

/** The same typeface, which measures no text twice: laying out a set of sheets asks two thousand times. */
function unhurried(typeface: FontTypeface): FontTypeface {
  const known = new Map<string, number>();
  return {
    ...typeface,
    width(text, height, bold = false) {
      const key = `${bold ? 'bold' : 'regular'} ${text}`;
      let one = known.get(key);
      if (one === undefined) {
        if (known.size >= MOST) known.clear();
        one = typeface.width(text, 1, bold);
        known.set(key, one);
      }
      return one * height;
    },
  };
}
