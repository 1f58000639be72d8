import { useQueryClient } from "@tanstack/react-query";
import { type FormEvent, type ReactNode, useEffect, useMemo, useRef, useState } from "react";
import type { Settings } from "../../../record/settings.ts";
import { type SectionName, sectionOf } from "../../../record/settings-sections.ts";
import { useAnnounce } from "../../parts/announcer.tsx";
import { Button } from "../../parts/button.tsx";
import { EditSheet } from "../../parts/fields/editing.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { placeOfFault } from "../../record/body-path.ts";
import { useKeepSection } from "../../record/keep-section.ts";
import { type SectionDraft, useSectionDraft } from "./section-draft.ts";
import { sectionTitles } from "./section-titles.ts";

interface SettingsSectionOptions {
  readonly name: SectionName;
  readonly settings: Settings;
  /** What the section is for, in a sentence or two. */
  readonly says: ReactNode;
  readonly children: ReactNode;
  readonly tellChanged: (name: SectionName, isChanged: boolean) => void;
}

/** One section of the settings: its fields, and the press that keeps them as one act. */
export function SettingsSection({ name, settings, says, children, tellChanged }: SettingsSectionOptions) {
  const draft = useSectionDraft(name, settings);
  const saving = useSaving(name, draft);
  const { keep, state, written } = saving;
  useEffect(() => tellChanged(name, draft.isChanged), [tellChanged, name, draft.isChanged]);
  const form = useFirstFault(keep.error);
  const faults = useMemo(
    () => (keep.error?.faults ?? []).map(({ path, says: why }) => ({ path: placeOfFault(path), says: why })),
    [keep.error],
  );
  return (
    <section className="settings-section" id={name} aria-labelledby={`${name}-title`}>
      <h2 id={`${name}-title`} tabIndex={-1}>
        {sectionTitles[name]}
      </h2>
      <div className="quiet settings-says">{says}</div>
      <form noValidate onSubmit={saving.submit} ref={form}>
        <EditSheet key={written} body={draft.body} change={saving.change} faults={faults}>
          {children}
        </EditSheet>
        <Refusals keep={keep} name={name} draft={draft} kept={saving.kept} />
        <footer className="settings-foot">
          <Button type="submit" weight={draft.isChanged ? "strong" : "plain"}>
            Save <span className="unseen">{sectionTitles[name].toLowerCase()}</span>
          </Button>
          {draft.isChanged && (
            <Button weight="bare" onClick={saving.drop}>
              Drop what was typed
            </Button>
          )}
          <span className="settings-state" data-look={draft.isChanged}>
            {state}
          </span>
        </footer>
      </form>
    </section>
  );
}

/** What saves a section, and how it stands towards what is kept. */
function useSaving(name: SectionName, draft: SectionDraft) {
  const keep = useKeepSection();
  const announce = useAnnounce();
  const [isSaved, setSaved] = useState(false);
  const [written, setWritten] = useState(0);
  const fresh = () => {
    draft.drop();
    keep.reset();
    setWritten((count) => count + 1);
  };
  const kept = () => {
    fresh();
    setSaved(true);
    announce(`Saved: ${sectionTitles[name].toLowerCase()}`);
  };
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (keep.isPending) return;
    // Of what can't be read nothing was written; saving the rest would pass over it.
    const unread = keep.error === null ? firstFault(event.currentTarget) : undefined;
    if (unread) return unread.focus();
    if (!draft.isChanged) return announce("Nothing was changed here");
    keep.mutate({ name, body: draft.body, seen: draft.seen }, { onSuccess: kept });
  };
  const change = (body: unknown) => {
    setSaved(false);
    if (keep.error !== null) keep.reset();
    draft.change(body);
  };
  return { keep, submit, change, kept, drop: fresh, written, state: stateInWords(draft.isChanged, isSaved) };
}

const firstFault = (form: HTMLElement | null): HTMLElement | null | undefined =>
  form?.querySelector<HTMLElement>("[aria-invalid=true]");

/** Goes to the first field that was refused. */
function useFirstFault(error: unknown) {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (error !== null) firstFault(form.current)?.focus();
  }, [error]);
  return form;
}

function stateInWords(isChanged: boolean, isSaved: boolean): string {
  if (isChanged) return "◆ Not saved yet; it stays here over a reload of the page.";
  return isSaved ? "✓ Saved" : "";
}

interface RefusalsOptions {
  readonly keep: ReturnType<typeof useKeepSection>;
  readonly name: SectionName;
  readonly draft: SectionDraft;
  readonly kept: () => void;
}

/** Why a section was not saved; where another window kept the same one, a choice between both. */
function Refusals({ keep, name, draft, kept }: RefusalsOptions) {
  const client = useQueryClient();
  const { error } = keep;
  if (error === null) return null;
  if (error.code !== "record.conflict") return <SayRefusal of={error} />;
  const theirs = Object(error.facts.settings);
  const seen = sectionOf(theirs, name);
  const takeTheirs = () => {
    draft.drop();
    keep.reset();
    client.setQueryData(["settings"], theirs);
  };
  return (
    <div className="say" role="alert">
      <p>{error.message} Nothing is lost: save yours over it, or take what stands.</p>
      <div className="settings-foot">
        <Button onClick={() => keep.mutate({ name, body: draft.body, seen }, { onSuccess: kept })}>Save mine</Button>
        <Button onClick={takeTheirs}>Take the other</Button>
      </div>
    </div>
  );
}
