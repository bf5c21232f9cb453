import type { Locator } from 'playwright-core';

/**
 * Where the line around a cut crosses each row of an element's picture, in pixels from its left, from left to right.
 * The line is blue-black; hatching is paler than it, and shadow on wood browner.
 */
export async function inkInRows(element: Locator): Promise<readonly (readonly number[])[]> {
  const picture = `data:image/png;base64,${(await element.screenshot()).toString('base64')}`;
  return element.page().evaluate(async (url) => {
    const bitmap = await createImageBitmap(await (await fetch(url)).blob());
    const { width, height } = bitmap;
    const paper = new OffscreenCanvas(width, height).getContext('2d');
    if (!paper) throw new Error('The browser gives no canvas to read the picture from');
    paper.drawImage(bitmap, 0, 0);
    const { data } = paper.getImageData(0, 0, width, height);
    return Array.from({ length: height }, (_, y) => {
      const crossings: number[] = [];
      let dark = 0;
      let moment = 0;
      for (let x = 0; x <= width; x++) {
        const [red = 255, green = 255, blue = 255] =
          x < width ? data.subarray(4 * (y * width + x), 4 * (y * width + x) + 3) : [];
        const tone = (red + green + blue) / 3;
        if (tone < 75 && blue > red - 14) {
          dark += 75 - tone;
          moment += (75 - tone) * (x + 0.5);
        } else if (dark > 0) {
          crossings.push(moment / dark);
          dark = 0;
          moment = 0;
        }
      }
      return crossings;
    });
  }, picture);
}
