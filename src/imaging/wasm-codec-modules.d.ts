/** The part of the codecs that is used here; the packages bring no types of their own. */
declare module "@cornerstonejs/codec-*/decodewasmjs" {
  export interface Decoder {
    /** Room inside the codec for the coded bytes. */
    getEncodedBuffer(bytes: number): Uint8Array;
    decode(): void;
    /** A view of the codec's memory, valid until the next call. */
    getDecodedBuffer(): ArrayBufferView;
    getFrameInfo(): { width: number; height: number; bitsPerSample: number; componentCount: number };
    /** 0 where components stand apart; only JPEG-LS has a choice. */
    getInterleaveMode?(): number;
    delete(): void;
  }
  /** Each package has one of them. */
  export type CodecModule = Record<"JPEGDecoder" | "JpegLSDecoder" | "J2KDecoder", new () => Decoder>;
  export interface ModuleOptions {
    wasmBinary?: Uint8Array;
    print?: (line: string) => void;
    printErr?: (line: string) => void;
  }
  const loadModule: (options: ModuleOptions) => Promise<CodecModule>;
  export default loadModule;
}
