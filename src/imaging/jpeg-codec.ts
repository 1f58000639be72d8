import loadJpegModule, { type JpegModule } from "@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasmjs";

/** Gives the bytes of the codec's WebAssembly (`libjpegturbowasm_decode.wasm`), from wherever the program keeps it. */
export type LoadWasm = () => Promise<Uint8Array>;

/** A decoded JPEG: 8-bit components, pixel by pixel. */
export interface DecodedJpeg {
  readonly columns: number;
  readonly rows: number;
  readonly components: number;
  readonly data: Uint8Array;
}

/** Thrown when the codec itself can't be had, which is no fault of the file. */
export class CodecMissing extends Error {
  override readonly name = "CodecMissing";
  constructor(override readonly cause: unknown) {
    super("the JPEG codec could not be loaded");
  }
}

let loading: Promise<JpegModule> | undefined;

/**
 * Decodes a JPEG of 8 bits.
 * Takes the file's bytes and, in a browser, who brings the codec's WebAssembly; on Node the package finds its own.
 * Gives the components as a copy of their own. The codec is loaded once, at the first call.
 * @throws CodecMissing; whatever the codec throws for damaged data (a number or an Error); the caller names the file.
 */
export async function decodeJpegBytes(bytes: Uint8Array, loadWasm?: LoadWasm): Promise<DecodedJpeg> {
  const codec = await loaded(loadWasm);
  const decoder = new codec.JPEGDecoder();
  try {
    decoder.getEncodedBuffer(bytes.length).set(bytes);
    decoder.decode();
    const { width, height, componentCount } = decoder.getFrameInfo();
    return { columns: width, rows: height, components: componentCount, data: decoder.getDecodedBuffer().slice() };
  } catch (cause) {
    // After damaged data the codec's memory is not to be relied on: the next film gets a fresh one.
    loading = undefined;
    throw cause;
  } finally {
    decoder.delete();
  }
}

async function loaded(loadWasm?: LoadWasm): Promise<JpegModule> {
  loading ??= load(loadWasm);
  try {
    return await loading;
  } catch (cause) {
    loading = undefined;
    throw new CodecMissing(cause);
  }
}

async function load(loadWasm?: LoadWasm): Promise<JpegModule> {
  const silent = { print: () => undefined, printErr: () => undefined };
  return loadJpegModule(loadWasm === undefined ? silent : { ...silent, wasmBinary: await loadWasm() });
}
