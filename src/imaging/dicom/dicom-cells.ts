import type { ColourLayout } from "../luminance.ts";
import type { DicomPicture } from "./dicom-picture.ts";
import type { SampleLayout } from "./dicom-samples.ts";
import { frameOfFragments } from "./frame-fragments.ts";
import { type UnpackingFrame, unpackedFrame } from "./packed-frame.ts";

/** Where the samples of a picture lie once they are unpacked, and where the components of a pixel. */
export interface DicomCells extends SampleLayout {
  readonly colour: ColourLayout;
  /** The components are brightness and colour differences still. */
  readonly isYbr: boolean;
  /** The packed frame keeps less than it was given. */
  readonly lossy: boolean;
}

/**
 * The cells of a picture, unpacked if need be.
 * Takes the data set's bytes, the picture it declares, and what it is unpacked for. Gives where the samples lie.
 * @throws Refusal as {@link frameOfFragments} and {@link unpackedFrame}.
 */
export async function dicomCellsOf(
  bytes: Uint8Array,
  picture: DicomPicture,
  about: UnpackingFrame,
): Promise<DicomCells> {
  const { columns, rows, perPixel, photometric, syntax, highBit, bitsStored, signed } = picture;
  const pixels = columns * rows;
  const layoutOf = (apart: boolean): ColourLayout => (apart ? { step: 1, apart: pixels } : { step: 3, apart: 1 });
  const common = { bitsStored, highBit, signed, count: pixels * perPixel };
  if (syntax.packing === "none")
    return { ...common, ...nativeCells(bytes, picture, layoutOf(picture.apart)), lossy: false };
  const { madeRgb, apart, ...frame } = await unpackedFrame(
    frameOfFragments(bytes, picture.from, about.name),
    picture,
    about,
  );
  return {
    ...common,
    ...{ bytes: frame.bytes, bytesEach: frame.bytesEach, from: 0, littleEndian: true, exchangedPairs: false },
    // Samples of fewer bits than the cell stand at its low end, whatever the data set says of the cell.
    highBit: frame.bits > highBit ? highBit : bitsStored - 1,
    colour: layoutOf(apart),
    isYbr: (photometric === "YBR" || photometric === "YBR_422") && !madeRgb,
    lossy: frame.lossy,
  };
}

type Native = Pick<DicomCells, "bytes" | "from" | "bytesEach" | "littleEndian" | "exchangedPairs" | "colour" | "isYbr">;

function nativeCells(bytes: Uint8Array, picture: DicomPicture, colour: ColourLayout): Native {
  const { photometric, syntax, bitsAllocated, exchangedPairs, from } = picture;
  const bytesEach = bitsAllocated === 8 ? 1 : 2;
  const native = { bytes, from, bytesEach, littleEndian: syntax.littleEndian, exchangedPairs, colour } as const;
  if (photometric !== "YBR_422") return { ...native, isYbr: photometric === "YBR" };
  const { spread, layout } = spreadPairs(bytes.subarray(from), picture);
  return { ...native, bytes: spread, from: 0, colour: layout, isYbr: true };
}

/** Two pixels share their colour differences: four cells, two of brightness and one of each difference, become six. */
function spreadPairs(bytes: Uint8Array, { columns, rows, bitsAllocated }: DicomPicture) {
  const cell = bitsAllocated / 8;
  const spread = new Uint8Array(columns * rows * 3 * cell);
  for (let pixel = 0; pixel < columns * rows; pixel++) {
    const pair = pixel & ~1;
    for (const [nth, from] of [2 * pair + (pixel & 1), 2 * pair + 2, 2 * pair + 3].entries())
      for (let byte = 0; byte < cell; byte++) spread[(3 * pixel + nth) * cell + byte] = bytes[from * cell + byte] ?? 0;
  }
  return { spread, layout: { step: 3, apart: 1 } };
}
