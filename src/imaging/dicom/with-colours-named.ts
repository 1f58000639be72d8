/** The mark that says what colours a JPEG holds, here red, green and blue as they stand. */
const asTheyStand = Uint8Array.of(0xff, 0xee, 0, 14, 0x41, 0x64, 0x6f, 0x62, 0x65, 0, 100, 0, 0, 0, 0, 0);
const afterStart = 2;

/**
 * A JPEG of red, green and blue that says so, as a DICOM data set may say it in its place.
 * Takes the stream. Gives one with the mark put first; what the stream says of itself later still counts for more.
 * @source Recommendation ITU-T T.872, 2012, 6.5.3, the APP14 mark (memory)
 */
export function withColoursNamed(stream: Uint8Array): Uint8Array {
  const named = new Uint8Array(stream.length + asTheyStand.length);
  named.set(stream.subarray(0, afterStart));
  named.set(asTheyStand, afterStart);
  named.set(stream.subarray(afterStart), afterStart + asTheyStand.length);
  return named;
}
