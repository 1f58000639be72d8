import { createHash, randomUUID } from "node:crypto";
import type { z } from "zod";
import { brightIsHigh } from "../imaging/bright-is-high.ts";
import { cropFilm } from "../imaging/crop.ts";
import { decodeFilm } from "../imaging/decode-film.ts";
import { encodePng16 } from "../imaging/encode-png16.ts";
import type { FilmPixels } from "../imaging/film-pixels.ts";
import { invertFilm } from "../imaging/invert.ts";
import type { Gesture } from "../record/change.ts";
import type { BodyOf } from "../record/parts.ts";
import type { Store } from "../store/store.ts";
import type { filmImportSchema } from "./api.ts";

type Asked = z.output<typeof filmImportSchema>;

/**
 * Takes a file in as a film: decoded in full depth, cropped and turned as asked, kept without anything that was said
 * about a person, and the gesture that puts it into a case.
 * @throws Refusal of the decoder, the crop, or the disk
 */
export async function takeInFilm(
  store: Store,
  bytes: Uint8Array,
  asked: Asked,
): Promise<{ partId: string; gesture: Gesture }> {
  const whole = await decodeFilm(bytes, asked.name);
  const crop = cropOf(asked, whole);
  const cut = crop === undefined ? whole : cropFilm(whole, crop);
  const film = brightIsHigh(asked.invert === "yes" ? invertFilm(cut) : cut);
  const hash = await store.keepFilm(encodePng16(film));
  const partId = `film-${randomUUID().slice(0, 13)}`;
  const sourceSha256 = createHash("sha256").update(bytes).digest("hex");
  const body = filmBody(film, { hash, sourceSha256, asked, ...(crop === undefined ? {} : { crop }) });
  const operations = [{ op: "put" as const, id: partId, kind: "film", baseRevision: 0, body }];
  return { partId, gesture: { words: `Film of ${asked.takenOn} taken in`, operations } };
}

/** The window that the file asks for, as the first view of the film. */
function viewOf({ technical: { window } }: FilmPixels): Pick<BodyOf<"film">, "view"> {
  if (window === undefined || window.function === "sigmoid") return {};
  const whole = { invert: false, quarterTurns: 0, mirrored: false };
  return { view: { windowCentre: window.center, windowWidth: window.width, ...whole } };
}

type Crop = NonNullable<BodyOf<"film">["technical"]["crop"]>;

function cropOf(asked: Asked, whole: FilmPixels): Crop | undefined {
  const { cropColumn, cropRow, cropColumns, cropRows } = asked;
  if ([cropColumn, cropRow, cropColumns, cropRows].every((side) => side === undefined)) return undefined;
  const column = cropColumn ?? 0;
  const row = cropRow ?? 0;
  return { column, row, columns: cropColumns ?? whole.columns - column, rows: cropRows ?? whole.rows - row };
}

function filmBody(
  film: FilmPixels,
  from: { hash: string; sourceSha256: string; asked: Asked; crop?: Crop },
): BodyOf<"film"> {
  const { sourceFormat, wasColour, lossy, detectorSpacingMm, pixelSpacingMm, calibrationType, magnification } =
    film.technical;
  return {
    hash: from.hash,
    ...{ columns: film.columns, rows: film.rows, bitsStored: film.bitsStored },
    ...{
      takenOn: from.asked.takenOn,
      purpose: from.asked.purpose,
      receptor: "unknown",
      uRunsTo: "unknown",
      caption: "",
    },
    ...viewOf(film),
    technical: {
      ...{ sourceFormat, wasColour, lossy, sourceSha256: from.sourceSha256, inverted: from.asked.invert === "yes" },
      ...(from.crop === undefined ? {} : { crop: from.crop }),
      ...(detectorSpacingMm === undefined ? {} : { detectorSpacingMm: pair(detectorSpacingMm) }),
      ...(pixelSpacingMm === undefined ? {} : { pixelSpacingMm: pair(pixelSpacingMm) }),
      ...(calibrationType === undefined ? {} : { calibrationType }),
      ...(magnification === undefined ? {} : { magnification }),
    },
  };
}

const pair = ([rows, columns]: readonly [number, number]): [number, number] => [rows, columns];
