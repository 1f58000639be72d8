/** The part of the JPEG codec that is used here; the package brings no types of its own. */
declare module "@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasmjs" {
  export interface JpegDecoder {
    /** Room inside the codec for the coded bytes. */
    getEncodedBuffer(bytes: number): Uint8Array;
    decode(): void;
    /** A view of the codec's memory, valid until the next call. */
    getDecodedBuffer(): Uint8Array;
    getFrameInfo(): { width: number; height: number; bitsPerSample: number; componentCount: number };
    delete(): void;
  }
  export interface JpegModule {
    JPEGDecoder: new () => JpegDecoder;
  }
  export interface JpegModuleOptions {
    wasmBinary?: Uint8Array;
    print?: (line: string) => void;
    printErr?: (line: string) => void;
  }
  const loadJpegModule: (options?: JpegModuleOptions) => Promise<JpegModule>;
  export default loadJpegModule;
}
