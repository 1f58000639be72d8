import type { TiffFields } from "./tiff-fields.ts";

/** What one picture of a TIFF declares of itself. */
export interface TiffPage {
  readonly columns: number;
  readonly rows: number;
  readonly depth: number;
  readonly channels: number;
  readonly colour: "whiteIsZero" | "blackIsZero" | "rgb" | "palette";
  /** Channels stand one after the other and not pixel by pixel. */
  readonly apart: boolean;
  readonly compression: "none" | "lzw" | "deflate" | "runs";
  /** Samples are kept as differences to the one on their left. */
  readonly differences: boolean;
  /** Columns and rows of the strips or tiles that the picture is cut into. */
  readonly piece: { readonly columns: number; readonly rows: number };
  readonly offsets: readonly number[];
  readonly lengths: readonly number[];
  readonly palette: readonly number[];
  readonly orientation: number | undefined;
}

const tags = {
  kind: 254,
  columns: 256,
  rows: 257,
  bits: 258,
  compression: 259,
  colour: 262,
  fillOrder: 266,
  stripOffsets: 273,
  orientation: 274,
  channels: 277,
  rowsPerStrip: 278,
  stripLengths: 279,
  planes: 284,
  predictor: 317,
  palette: 320,
  tileColumns: 322,
  tileRows: 323,
  tileOffsets: 324,
  tileLengths: 325,
  sampleFormat: 339,
} as const;

const compressions: Readonly<Record<number, TiffPage["compression"]>> = {
  1: "none",
  5: "lzw",
  8: "deflate",
  32946: "deflate",
  32773: "runs",
};
/** Names of what is not read, so that a refusal can say it. */
const otherCompressions: Readonly<Record<number, string>> = {
  2: "as a fax",
  3: "as a fax",
  4: "as a fax",
  6: "as JPEG",
  7: "as JPEG",
  34712: "as JPEG 2000",
};
const otherColours: Readonly<Record<number, string>> = {
  5: "inks",
  6: "brightness and colour differences",
  8: "CIE L*a*b*",
};
const colours: readonly TiffPage["colour"][] = ["whiteIsZero", "blackIsZero", "rgb", "palette"];
const depthsOf = { whiteIsZero: [1, 2, 4, 8, 16], blackIsZero: [1, 2, 4, 8, 16], rgb: [8, 16], palette: [1, 2, 4, 8] };

/** Whether a directory holds a smaller copy of another and no picture of its own. */
export const isSmallCopy = (fields: TiffFields): boolean => ((fields.get(tags.kind)?.()[0] ?? 0) & 1) === 1;

/**
 * The picture that a directory describes.
 * Takes the fields. Gives the page, or in words what of it is not read.
 * @source TIFF revision 6.0, 1992, sections 4 to 8, 14 and 15 (memory)
 */
export function tiffPageOf(fields: TiffFields): TiffPage | string {
  const number = (tag: number, usual: number) => fields.get(tag)?.()[0] ?? usual;
  const bits = fields.get(tags.bits)?.() ?? [1];
  const depth = bits[0] ?? 1;
  const compression = compressions[number(tags.compression, 1)];
  const colour = colours[number(tags.colour, 99)];
  const channels = number(tags.channels, 1);
  const predictor = number(tags.predictor, 1);
  if (compression === undefined) return packedText(number(tags.compression, 1));
  if (colour === undefined) return `a TIFF whose colours are ${otherColours[number(tags.colour, 99)] ?? "not told"}`;
  if (number(tags.sampleFormat, 1) !== 1) return "a TIFF of numbers with a sign or a fraction";
  if (number(tags.fillOrder, 1) !== 1) return "a TIFF whose bits stand the other way round";
  if (!depthsOf[colour].includes(depth) || bits.some((each) => each !== depth))
    return `a TIFF of ${bits.slice(0, 4).join(", ")} bits`;
  if (channels < (colour === "rgb" ? 3 : 1) || channels > 8) return `a TIFF of ${channels} channels`;
  if (predictor !== 1 && !(predictor === 2 && depth >= 8)) return `a TIFF with predictor ${predictor}`;
  return {
    columns: number(tags.columns, 0),
    rows: number(tags.rows, 0),
    ...{ depth, channels, colour, compression },
    apart: number(tags.planes, 1) === 2 && channels > 1,
    differences: predictor === 2,
    ...piecesOf(fields),
    palette: fields.get(tags.palette)?.() ?? [],
    orientation: fields.get(tags.orientation)?.()[0],
  };
}

const packedText = (compression: number): string =>
  `a TIFF packed ${otherCompressions[compression] ?? `in way ${compression}`}`;

function piecesOf(fields: TiffFields): Pick<TiffPage, "piece" | "offsets" | "lengths"> {
  const number = (tag: number) => fields.get(tag)?.()[0] ?? 0;
  const isTiled = fields.has(tags.tileOffsets);
  const [offsets, lengths] = isTiled ? [tags.tileOffsets, tags.tileLengths] : [tags.stripOffsets, tags.stripLengths];
  const rowsPerStrip = Math.min(number(tags.rowsPerStrip) || number(tags.rows), number(tags.rows));
  const strip = { columns: number(tags.columns), rows: rowsPerStrip };
  return {
    piece: isTiled ? { columns: number(tags.tileColumns), rows: number(tags.tileRows) } : strip,
    offsets: fields.get(offsets)?.() ?? [],
    lengths: fields.get(lengths)?.() ?? [],
  };
}
