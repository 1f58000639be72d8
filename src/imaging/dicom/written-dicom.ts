/** The three ways of writing attributes. */
export type Syntax = "implicit" | "explicit" | "bigEndian";
const syntaxes: Record<Syntax, string> = {
  implicit: "1.2.840.10008.1.2",
  explicit: "1.2.840.10008.1.2.1",
  bigEndian: "1.2.840.10008.1.2.2",
};
/** One attribute: its tag as eight hexadecimal digits, its representation, and its value. */
export type Attribute = [tag: string, vr: string, value: string | number | Uint8Array];

/** The bytes of one attribute, written by the rules of DICOM PS3.5, clause 7.1. */
function written([tag, vr, value]: Attribute, syntax: Syntax): Uint8Array {
  const little = syntax !== "bigEndian";
  const body = bodyOf(value, little);
  const long = vr === "OW" || vr === "OB" || vr === "SQ";
  const headBytes = syntax === "implicit" || !long ? 8 : 12;
  const bytes = new Uint8Array(headBytes + body.length);
  const view = new DataView(bytes.buffer);
  view.setUint16(0, Number.parseInt(tag.slice(0, 4), 16), little);
  view.setUint16(2, Number.parseInt(tag.slice(4), 16), little);
  if (syntax === "implicit") view.setUint32(4, body.length, little);
  else {
    bytes.set(new TextEncoder().encode(vr), 4);
    if (long) view.setUint32(8, body.length, little);
    else view.setUint16(6, body.length, little);
  }
  bytes.set(body, headBytes);
  return bytes;
}

function bodyOf(value: string | number | Uint8Array, little: boolean): Uint8Array {
  if (typeof value === "number") {
    const bytes = new Uint8Array(2);
    new DataView(bytes.buffer).setUint16(0, value, little);
    return bytes;
  }
  if (typeof value === "string") return new TextEncoder().encode(value.length % 2 === 0 ? value : `${value} `);
  return value;
}

const joined = (parts: Uint8Array[]): Uint8Array => Uint8Array.from(parts.flatMap((part) => [...part]));

const usual: Record<string, Attribute> = {
  "00100010": ["00100010", "PN", "SECRET^NAME"],
  "00100030": ["00100030", "DA", "19690720"],
  "00280002": ["00280002", "US", 1],
  "00280004": ["00280004", "CS", "MONOCHROME2"],
  "00280010": ["00280010", "US", 2],
  "00280011": ["00280011", "US", 3],
  "00280100": ["00280100", "US", 16],
  "00280101": ["00280101", "US", 12],
  "00280102": ["00280102", "US", 11],
  "00280103": ["00280103", "US", 0],
};

/**
 * A DICOM file of 3 columns by 2 rows for tests, with the given attributes in place of the usual, in the order of their
 * tags; the transfer syntax is that of the writing unless it is given as well.
 */
export function dicom(
  pixels: Uint8Array | undefined,
  changes: Attribute[] = [],
  syntax: Syntax = "explicit",
  vr = "OW",
): Uint8Array {
  const given = Object.fromEntries(changes.map((change) => [change[0], change]));
  const { "00020010": transfer, ...attributes } = { ...usual, ...given };
  const inOrder = Object.keys(attributes).sort();
  const body = inOrder.flatMap((tag) => (attributes[tag] === undefined ? [] : [written(attributes[tag], syntax)]));
  if (pixels !== undefined) body.push(written(["7fe00010", vr, pixels], syntax));
  const identifier = transfer?.[2] ?? syntaxes[syntax];
  const evenly = typeof identifier === "string" ? identifier + "\0".repeat(identifier.length % 2) : identifier;
  const meta = written(["00020010", "UI", evenly], "explicit");
  return joined([new Uint8Array(128), new TextEncoder().encode("DICM"), meta, ...body]);
}

/** The value of a sequence with one item of given attributes. */
export function itemOf(attributes: Attribute[], syntax: Syntax = "explicit"): Uint8Array {
  const body = joined(attributes.map((attribute) => written(attribute, syntax)));
  return joined([piece(0xe000, body.length, syntax !== "bigEndian"), body]);
}

/** Packed pixel data of given fragments, an empty table of places before them and the end mark behind. */
export function fragmentsOf(...fragments: Uint8Array[]): Uint8Array {
  const parts = [new Uint8Array(0), ...fragments].flatMap((each) => [piece(0xe000, each.length), each]);
  return joined([...parts, piece(0xe0dd, 0)]);
}

function piece(mark: number, length: number, little = true): Uint8Array {
  const bytes = new Uint8Array(8);
  const view = new DataView(bytes.buffer);
  view.setUint16(0, 0xfffe, little);
  view.setUint16(2, mark, little);
  view.setUint32(4, length, little);
  return bytes;
}

/** Numbers as 16-bit words of one byte order. */
export function words(values: number[], little = true): Uint8Array {
  const bytes = new Uint8Array(values.length * 2);
  const view = new DataView(bytes.buffer);
  for (const [index, value] of values.entries()) view.setUint16(2 * index, value & 0xffff, little);
  return bytes;
}
