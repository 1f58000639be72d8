import { useCallback, useMemo, useState } from "react";
import type { Settings } from "../../../record/settings.ts";
import { type SectionBody, type SectionName, sameSection, sectionOf } from "../../../record/settings-sections.ts";

/** A section as it is being written, and as it stood when the writing began. */
interface Writing {
  readonly body: SectionBody;
  readonly seen: SectionBody;
}

/** A section of the settings that is open; what is typed in it stays over a reload of the page until it is saved or dropped. */
export interface SectionDraft {
  readonly body: SectionBody;
  /** As it stood when the writing began. */
  readonly seen: SectionBody;
  readonly isChanged: boolean;
  readonly change: (body: unknown) => void;
  readonly drop: () => void;
}

/** See {@link SectionDraft}. */
export function useSectionDraft(name: SectionName, settings: Settings): SectionDraft {
  const stands = useMemo(() => sectionOf(settings, name), [settings, name]);
  const [writing, setWriting] = useState(() => writingKept(name));
  const keep = useCallback(
    (next: Writing | undefined) => {
      setWriting(next);
      if (next === undefined) sessionStorage.removeItem(placeOf(name));
      else sessionStorage.setItem(placeOf(name), JSON.stringify(next));
    },
    [name],
  );
  const seen = writing?.seen ?? stands;
  const body = writing?.body ?? stands;
  const change = useCallback((next: unknown) => keep({ body: Object(next), seen }), [keep, seen]);
  const drop = useCallback(() => keep(undefined), [keep]);
  return { body, seen, change, drop, isChanged: writing !== undefined && !sameSection(body, stands) };
}

const placeOf = (name: SectionName): string => `canalog-settings-${name}`;

/** What was typed in this window before the page was loaded anew; nothing where it can't be read. */
function writingKept(name: SectionName): Writing | undefined {
  const kept = textRead(sessionStorage.getItem(placeOf(name)));
  const { body, seen }: Partial<Writing> = Object(kept);
  return isBody(body) && isBody(seen) ? { body, seen } : undefined;
}

function textRead(text: string | null): unknown {
  try {
    return text === null ? undefined : JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isBody = (value: unknown): value is SectionBody =>
  typeof value === "object" && value !== null && !Array.isArray(value);
