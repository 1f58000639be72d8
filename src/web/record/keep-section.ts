import { useMutation, useQueryClient } from "@tanstack/react-query";
import type { Settings } from "../../record/settings.ts";
import {
  type SectionBody,
  type SectionName,
  sameSection,
  sectionOf,
  withSection,
} from "../../record/settings-sections.ts";
import { ask, Refused } from "./api.ts";

/** A section as it was written, and as it stood when the writing began. */
interface SectionWritten {
  readonly name: SectionName;
  readonly body: SectionBody;
  readonly seen: SectionBody;
}

/** How settings are read and written. */
interface SettingsWorld {
  readonly read: () => Promise<Settings>;
  readonly write: (settings: Settings) => Promise<Settings>;
}

/**
 * Keeps one section over the settings as they stand now, so that what another window kept of the others stays.
 * @throws Refused `input.invalid` with its faults, `record.conflict` (facts.settings) where the same section was kept elsewhere
 */
export async function keepSection({ name, body, seen }: SectionWritten, world: SettingsWorld): Promise<Settings> {
  const stood = await world.read();
  const theirs = sectionOf(stood, name);
  if (!sameSection(theirs, seen) && !sameSection(theirs, body))
    throw new Refused("record.conflict", "This was changed in another window as well.", { settings: stood });
  const made = withSection(stood, name, body);
  if ("faults" in made) throw new Refused("input.invalid", "Not saved: see the marked fields.", {}, made.faults);
  return world.write(made.settings);
}

const overTheWire: SettingsWorld = {
  read: () => ask<Settings>("/settings"),
  write: (settings) => ask<Settings>("/settings", { method: "PUT", body: settings }),
};

/** Keeps one section of the settings; see {@link keepSection}. */
export function useKeepSection() {
  const client = useQueryClient();
  return useMutation<Settings, Refused, SectionWritten>({
    mutationFn: (written) => keepSection(written, overTheWire),
    onSuccess: (settings) => {
      client.setQueryData(["settings"], settings);
      void client.invalidateQueries({ queryKey: ["case"] });
    },
  });
}
