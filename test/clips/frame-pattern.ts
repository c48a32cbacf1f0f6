/**
 * A picture that says which clip and which frame it is, in blocks of black and white large enough to outlive any encoder:
 * eight columns and four rows. The first two rows hold the clip's number (5 bits) and the frame's (11 bits), the third
 * their check (CRC-8), the last never changes. A picture that is turned, mirrored or of two frames mixed does not read.
 */
export const COLUMNS = 8;
export const ROWS = 4;

/** The picture as it is shown, upright. */
export const WIDTH_PX = 128;
export const HEIGHT_PX = 96;

/** The last row: the same neither from behind nor turned, and no row of a blank picture. */
const FOOT = 0b1011_0010;

const DARK = 40;
const LIGHT = 216;

/** How far from the middle grey a block must be to count; a mix of two frames is nearer. */
const CLEAR = 40;

/** Which picture it is: of which clip, 0 to 31, and which frame, 0 to 2047. */
export interface Picture {
  clip: number;
  frame: number;
}

/** The blocks of a picture, row by row, true for a light one. */
export function blocksOf({ clip, frame }: Picture): boolean[] {
  const word = (clip << 11) | frame;
  const bytes = [word >> 8, word & 0xff];
  return [...bytes, checkOf(bytes), FOOT].flatMap((byte) =>
    Array.from({ length: COLUMNS }, (_, column) => ((byte >> (COLUMNS - 1 - column)) & 1) === 1),
  );
}

/**
 * Reads a picture from the brightness (0 to 255) in the middle of each of its blocks, row by row.
 * @returns null for anything that is not one whole, upright picture
 */
export function readBlocks(brightness: readonly number[]): Picture | null {
  if (brightness.length !== COLUMNS * ROWS) return null;
  if (brightness.some((each) => Math.abs(each - 128) < CLEAR)) return null;
  const bytes = Array.from({ length: ROWS }, (_, row) =>
    brightness
      .slice(row * COLUMNS, (row + 1) * COLUMNS)
      .reduce((byte, each) => (byte << 1) | Number(each > 128), 0),
  );
  const [high = 0, low = 0, check, foot] = bytes;
  if (foot !== FOOT || check !== checkOf([high, low])) return null;
  const word = (high << 8) | low;
  return { clip: word >> 11, frame: word & 0x7ff };
}

/** A turn of a picture, clockwise, from how it is stored to how it is shown. */
export type Turn = 0 | 90 | 180 | 270;

/** The size a picture is stored at so that it is shown upright after its turn. */
export function storedSize(turn: Turn, scale = 1): { widthPx: number; heightPx: number } {
  const [widthPx, heightPx] = turn % 180 === 0 ? [WIDTH_PX, HEIGHT_PX] : [HEIGHT_PX, WIDTH_PX];
  return { widthPx: widthPx * scale, heightPx: heightPx * scale };
}

/** The stored pixels of a picture, four bytes each, top row first. */
export function pixelsOf(picture: Picture, turn: Turn = 0, scale = 1): Uint8Array {
  const { widthPx, heightPx } = storedSize(turn, scale);
  const blocks = blocksOf(picture);
  const pixels = new Uint8Array(widthPx * heightPx * 4).fill(255);
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1) {
      const [acrossPx, downPx] = shownPlace(x, y, widthPx, heightPx, turn);
      const column = Math.floor((acrossPx * COLUMNS) / (WIDTH_PX * scale));
      const row = Math.floor((downPx * ROWS) / (HEIGHT_PX * scale));
      pixels.fill(
        blocks[row * COLUMNS + column] ? LIGHT : DARK,
        (y * widthPx + x) * 4,
        (y * widthPx + x) * 4 + 3,
      );
    }
  }
  return pixels;
}

/** Where a stored pixel is seen after the picture's turn. */
function shownPlace(x: number, y: number, width: number, height: number, turn: Turn): [number, number] {
  if (turn === 90) return [height - 1 - y, x];
  if (turn === 180) return [width - 1 - x, height - 1 - y];
  if (turn === 270) return [y, width - 1 - x];
  return [x, y];
}

/** CRC-8 with the polynomial x^8 + x^2 + x + 1, from memory. */
function checkOf(bytes: readonly number[]): number {
  return bytes.reduce((check, byte) => {
    let left = check ^ byte;
    for (let bit = 0; bit < 8; bit += 1) left = (left << 1) ^ (left & 0x80 ? 0x107 : 0);
    return left & 0xff;
  }, 0xff);
}
