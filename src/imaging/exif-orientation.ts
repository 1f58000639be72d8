import exifr from "exifr";

/**
 * The EXIF orientation of a picture; nothing else of its metadata is read.
 * Takes the bytes of a JPEG or of an EXIF block. Gives 1..8, or nothing where there is none or it can't be read:
 * a film that only lost its metadata is still a film.
 */
export async function orientationOf(bytes: Uint8Array): Promise<number | undefined> {
  try {
    const orientation: unknown = await exifr.orientation(bytes);
    return isOrientation(orientation) ? orientation : undefined;
  } catch {
    return undefined;
  }
}

const isOrientation = (value: unknown): value is number =>
  typeof value === "number" && Number.isInteger(value) && value >= 1 && value <= 8;
