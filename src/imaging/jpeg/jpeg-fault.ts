/** What is wrong with a JPEG stream, before the file's name is put to it. */
export class JpegFault extends Error {
  override readonly name = "JpegFault";
  constructor(
    readonly kind: "damaged" | "truncated" | "unsupported",
    /** What was found, as the second half of "it ..". */
    message: string,
  ) {
    super(message);
  }
}
