import { z } from "zod";
import { faultsOf } from "../core/faults-of.ts";
import type { Fault } from "../core/refusal.ts";
import { canonicalJson } from "./canonical-json.ts";
import { clinicFaults } from "./clinic-faults.ts";
import { clinicRules, emergencySettings } from "./clinic-rules.ts";
import { type Settings, settingsSchema } from "./settings.ts";

const whose = settingsSchema.shape;
const clinic = clinicRules.shape;

/** The sections of the settings, each kept by itself: the fields it holds and their form. */
const sectionForms = {
  you: settingsSchema.pick({ who: true, role: true, notation: true }),
  films: settingsSchema.pick({ clickSigmaPx: true, stopShortMm: true }),
  room: clinicRules.pick({ room: true, evaporationPerMin: true }),
  air: clinicRules.pick({ exposureLimits: true }),
  anaesthetic: clinicRules.pick({ doseLimits: true, ownDoseLimits: true, vasoconstrictorLimits: true }),
  irrigation: clinicRules.pick({ irrigation: true }),
  emergency: z.strictObject({ emergency: emergencySettings.optional() }),
} as const;
/** The name of a section. */
export type SectionName = keyof typeof sectionForms;
/** Every section, in the order in which they are shown. */
export const sectionNames = Object.keys(sectionForms).filter((name): name is SectionName => name in sectionForms);

/** What a section holds, by field; what is not set is absent. */
export type SectionBody = Readonly<Record<string, unknown>>;

/** A section of settings, as it stands in them. */
export function sectionOf(settings: Settings, name: SectionName): SectionBody {
  const held: SectionBody = { ...settings.clinic, ...settings };
  return Object.fromEntries(
    fieldsOf(name).flatMap((field) => (held[field] === undefined ? [] : [[field, held[field]]])),
  );
}

/** Whether two bodies of a section say the same. */
export const sameSection = (one: SectionBody, other: SectionBody): boolean =>
  canonicalJson(asWritten(one)) === canonicalJson(asWritten(other));

/**
 * The settings with one section as it was written; every other section stays as it stands. A field that was emptied is absent then, and a
 * clinic that has set nothing has no rules. Gives the faults instead where it does not fit, paths inside the section.
 */
export function withSection(
  settings: Settings,
  name: SectionName,
  body: SectionBody,
): { readonly settings: Settings } | { readonly faults: readonly Fault[] } {
  const raw = asWritten(body);
  const parsed = sectionForms[name].safeParse(raw);
  if (!parsed.success) return { faults: faultsOf(parsed.error, raw).map(inWords) };
  const data: SectionBody = parsed.data;
  const faults = clinicFaults(clinicRules.parse(ofClinic(data)));
  if (faults.length > 0) return { faults };
  const fields = fieldsOf(name);
  const rest = without({ ...settings }, fields.filter(isOfPerson));
  const rules = { ...without({ ...settings.clinic }, fields), ...ofClinic(data) };
  const next = { ...without(rest, ["clinic"]), ...ofPerson(data) };
  return { settings: settingsSchema.parse(Object.keys(rules).length === 0 ? next : { ...next, clinic: rules }) };
}

/** What was written, without what is empty; of an emergency, no call and no protocol are told as none. */
function asWritten(body: SectionBody): SectionBody {
  const { emergency, ...others }: SectionBody = Object(tidied(body));
  return emergency === undefined
    ? others
    : { ...others, emergency: { calls: [], protocols: {}, ...Object(emergency) } };
}

const inWords = ({ path, says }: Fault): Fault => ({
  path,
  says: says.startsWith("nothing ") ? "is needed; nothing stands here" : says,
});

const fieldsOf = (name: SectionName): readonly string[] => Object.keys(sectionForms[name].shape);
const isOfPerson = (field: string): boolean => field in whose;
const isOfClinic = (field: string): boolean => field in clinic;
const only = (body: SectionBody, wanted: (field: string) => boolean): SectionBody =>
  Object.fromEntries(Object.entries(body).filter(([field]) => wanted(field)));
const ofPerson = (body: SectionBody): SectionBody => only(body, isOfPerson);
const ofClinic = (body: SectionBody): SectionBody => only(body, isOfClinic);
const without = (body: SectionBody, fields: readonly string[]): SectionBody =>
  only(body, (field) => !fields.includes(field));

/** A value without what is empty in it: a field that was emptied, a group of which nothing is told; an empty row stays and is asked about. */
function tidied(value: unknown): unknown {
  if (typeof value === "string") return value.trim() === "" ? undefined : value;
  if (Array.isArray(value)) return value.length === 0 ? undefined : value.map((row) => tidied(row) ?? {});
  if (typeof value !== "object" || value === null) return value;
  const told = Object.entries(value).flatMap(([field, inner]) => {
    const kept = tidied(inner);
    return kept === undefined ? [] : [[field, kept] as const];
  });
  return told.length === 0 ? undefined : Object.fromEntries(told);
}
