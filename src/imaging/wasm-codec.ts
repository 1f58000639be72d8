import type { Decoder, ModuleOptions } from "@cornerstonejs/codec-charls/decodewasmjs";

/** The ways of packing that a codec in WebAssembly reads. */
export type CodecName = "jpeg" | "jpegLs" | "jpeg2000";

/** Gives the bytes of a codec's WebAssembly, from wherever the program keeps it. */
export type LoadCodec = (codec: CodecName) => Promise<Uint8Array>;

/** What a codec is given: the packed picture and, in a browser, who brings its WebAssembly; Node finds its own. */
export interface PackedPicture {
  readonly codec: CodecName;
  readonly bytes: Uint8Array;
  readonly loadCodec?: LoadCodec | undefined;
}

/** A picture as a codec gives it: one byte a sample up to 8 bits, two with the low one first above. */
export interface CodecPicture {
  readonly columns: number;
  readonly rows: number;
  readonly components: number;
  readonly bits: number;
  readonly data: Uint8Array;
  /** The components stand one after the other and not pixel by pixel. */
  readonly apart: boolean;
}

/** Thrown when the codec itself can't be had, which is no fault of the file. */
export class CodecMissing extends Error {
  override readonly name = "CodecMissing";
  constructor(override readonly cause: unknown) {
    super("the codec could not be loaded");
  }
}

type NewDecoder = () => Decoder;

/** Each codec's program, fetched only when a film asks for it. */
const decoders: Readonly<Record<CodecName, (options: ModuleOptions) => Promise<NewDecoder>>> = {
  jpeg: async (options) => {
    const { default: load } = await import("@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasmjs");
    const { JPEGDecoder } = await load(options);
    return () => new JPEGDecoder();
  },
  jpegLs: async (options) => {
    const { default: load } = await import("@cornerstonejs/codec-charls/decodewasmjs");
    const { JpegLSDecoder } = await load(options);
    return () => new JpegLSDecoder();
  },
  jpeg2000: async (options) => {
    const { default: load } = await import("@cornerstonejs/codec-openjpeg/decodewasmjs");
    const { J2KDecoder } = await load(options);
    return () => new J2KDecoder();
  },
};

const loading = new Map<CodecName, Promise<NewDecoder>>();

/**
 * Unpacks a picture with a codec in WebAssembly.
 * Takes the picture, whose header must have been checked before: a codec takes the memory that the header asks for.
 * Gives the samples as a copy of their own. A codec is loaded once, at the first picture of its kind.
 * @throws CodecMissing; whatever the codec throws for damaged data (a number or an Error); the caller names the file.
 */
export async function unpackWithCodec({ codec, bytes, loadCodec }: PackedPicture): Promise<CodecPicture> {
  const newDecoder = await loaded(codec, loadCodec);
  const decoder = newDecoder();
  try {
    decoder.getEncodedBuffer(bytes.length).set(bytes);
    decoder.decode();
    const { width, height, bitsPerSample, componentCount } = decoder.getFrameInfo();
    const apart = componentCount > 1 && decoder.getInterleaveMode?.() === 0;
    const sizes = { columns: width, rows: height, components: componentCount, bits: bitsPerSample };
    // The view's kind depends on the codec; its bytes don't.
    const { buffer, byteOffset, byteLength } = decoder.getDecodedBuffer();
    return { ...sizes, apart, data: new Uint8Array(buffer, byteOffset, byteLength).slice() };
  } catch (cause) {
    // After damaged data the codec's memory is not to be relied on: the next film gets a fresh one.
    loading.delete(codec);
    throw cause;
  } finally {
    decoder.delete();
  }
}

async function loaded(codec: CodecName, loadCodec?: LoadCodec): Promise<NewDecoder> {
  const before = loading.get(codec) ?? load(codec, loadCodec);
  loading.set(codec, before);
  try {
    return await before;
  } catch (cause) {
    loading.delete(codec);
    throw new CodecMissing(cause);
  }
}

async function load(codec: CodecName, loadCodec?: LoadCodec): Promise<NewDecoder> {
  const silent = { print: () => undefined, printErr: () => undefined };
  const options = loadCodec === undefined ? silent : { ...silent, wasmBinary: await loadCodec(codec) };
  return decoders[codec](options);
}
