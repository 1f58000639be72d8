import { createHash, randomUUID } from "node:crypto";
import type { z } from "zod";
import type { FilmPart } from "../imaging/crop.ts";
import type { FilmToKeep } from "../imaging/film-to-keep.ts";
import type { Gesture } from "../record/change.ts";
import type { BodyOf } from "../record/parts.ts";
import type { Store } from "../store/store.ts";
import type { filmImportSchema } from "./api.ts";
import type { FilmWork } from "./film-work.ts";

type Asked = z.output<typeof filmImportSchema>;

/**
 * Takes a file in as a film: decoded in full depth, cropped and turned as asked, kept without anything that was said
 * about a person, and the gesture that puts it into a case.
 * @throws Refusal of the decoder, the crop, or the disk
 */
export async function takeInFilm(
  { store, films }: { readonly store: Pick<Store, "keepFilm">; readonly films: Pick<FilmWork, "prepare"> },
  bytes: Uint8Array,
  asked: Asked,
): Promise<{ partId: string; gesture: Gesture }> {
  const wanted = { name: asked.name, invert: asked.invert === "yes", ...partOf(asked) };
  const prepared = await films.prepare(bytes, wanted);
  const hash = await store.keepFilm(prepared.png);
  const partId = `film-${randomUUID().slice(0, 13)}`;
  const sourceSha256 = createHash("sha256").update(bytes).digest("hex");
  const body = filmBody(prepared, { hash, sourceSha256, asked });
  const operations = [{ op: "put" as const, id: partId, kind: "film", baseRevision: 0, body }];
  return { partId, gesture: { words: `Film of ${asked.takenOn} taken in`, operations } };
}

/** The window that the file asks for, as the first view of the film. */
function viewOf({ technical: { window } }: FilmToKeep["film"]): Pick<BodyOf<"film">, "view"> {
  if (window === undefined || window.function === "sigmoid") return {};
  const whole = { invert: false, quarterTurns: 0, mirrored: false };
  return { view: { windowCentre: window.center, windowWidth: window.width, ...whole } };
}

/** The part that was asked for, in the words of the picture; nothing where the whole was. */
function partOf({ cropColumn, cropRow, cropColumns, cropRows }: Asked): { part?: Partial<FilmPart> } {
  const part = {
    ...(cropColumn === undefined ? {} : { column: cropColumn }),
    ...(cropRow === undefined ? {} : { row: cropRow }),
    ...(cropColumns === undefined ? {} : { columns: cropColumns }),
    ...(cropRows === undefined ? {} : { rows: cropRows }),
  };
  return Object.keys(part).length === 0 ? {} : { part };
}

function filmBody(
  { film, part }: FilmToKeep,
  from: { hash: string; sourceSha256: string; asked: Asked },
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
      ...(part === undefined ? {} : { crop: { ...part } }),
      ...(detectorSpacingMm === undefined ? {} : { detectorSpacingMm: pair(detectorSpacingMm) }),
      ...(pixelSpacingMm === undefined ? {} : { pixelSpacingMm: pair(pixelSpacingMm) }),
      ...(calibrationType === undefined ? {} : { calibrationType }),
      ...(magnification === undefined ? {} : { magnification }),
    },
  };
}

const pair = ([rows, columns]: readonly [number, number]): [number, number] => [rows, columns];
