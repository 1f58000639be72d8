/** The parts of the codecs that are used here; the packages bring no types of their own. */
declare module "@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasmjs" {
  const loadModule: import("./wasm-codec.ts").LoadModule<"JPEGDecoder">;
  export default loadModule;
}
declare module "@cornerstonejs/codec-charls/decodewasmjs" {
  const loadModule: import("./wasm-codec.ts").LoadModule<"JpegLSDecoder">;
  export default loadModule;
}
declare module "@cornerstonejs/codec-openjpeg/decodewasmjs" {
  const loadModule: import("./wasm-codec.ts").LoadModule<"J2KDecoder">;
  export default loadModule;
}
