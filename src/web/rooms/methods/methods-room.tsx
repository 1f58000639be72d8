import { useEffect } from "react";
import { Link } from "wouter";
import type { TopicView } from "../../../server/api.ts";
import { numberInWords } from "../../parts/figures-in-words.ts";
import { PageHead } from "../../parts/page-head.tsx";
import { SayRefusal } from "../../parts/say-refusal.tsx";
import { SeenMark } from "../../parts/seen-mark.tsx";
import { useTitle } from "../../parts/use-title.ts";
import { useSettings, useTopics } from "../../record/readings.ts";
import { clickSigmaOrigin } from "../../words/click-sigma-words.ts";
import { wordsOfName } from "../../words/words-of-name.ts";
import { MarkdownView } from "./markdown-view.tsx";
import "./methods-room.css";

/** How every number is computed, page by page. */
export function MethodsRoom({ topic }: { readonly topic: string }) {
  useTitle("Methods");
  const topics = useTopics();
  const shown = topic === "" ? topics.data?.[0] : topics.data?.find(({ name }) => name === topic);
  return (
    <div className="methods">
      <PageHead>
        <h1 className="methods-title">Methods</h1>
        <span className="quiet">how every number is computed</span>
      </PageHead>
      {topics.error && <SayRefusal of={topics.error} retry={() => void topics.refetch()} />}
      <div className="methods-columns">
        <nav aria-label="Computations">
          <ul>
            {topics.data?.map(({ name, summary }) => (
              <li key={name}>
                <Link href={`/methods/${name}`} aria-current={name === shown?.name ? "page" : undefined}>
                  <span>{wordsOfName(name)}</span>
                  <span className="quiet">{summary}</span>
                </Link>
              </li>
            ))}
          </ul>
        </nav>
        <main>
          {shown && <Page key={shown.name} topic={shown} />}
          {topics.data && !shown && <h2>There is no computation called {topic}</h2>}
        </main>
      </div>
    </div>
  );
}

/** The error that sums use now, beside the page that says how it is measured. */
function ClickErrorNow() {
  const settings = useSettings().data;
  if (settings === undefined) return null;
  return (
    <p className="methods-now">
      Sums use {numberInWords(settings.clickSigmaPx, 2)} px now: {clickSigmaOrigin(settings)}.{" "}
      <Link href="/calibration">Calibration</Link>
    </p>
  );
}

function Page({ topic }: { readonly topic: TopicView }) {
  useEffect(goToPlace, []);
  return (
    <article>
      <p className="quiet">
        {topic.name}, version {topic.version}
      </p>
      {topic.name === "clickError" && <ClickErrorNow />}
      <MarkdownView text={topic.method} />
      <h2>Sources</h2>
      <ul className="methods-sources">
        {topic.sources.map(({ id, reference, verification }) => (
          <li key={id}>
            {reference} <SeenMark verification={verification} />
          </li>
        ))}
      </ul>
    </article>
  );
}

/** An address that names a row of a page leads to it. */
function goToPlace(): void {
  const row = document.getElementById(window.location.hash.slice(1));
  row?.scrollIntoView({ block: "center" });
  row?.focus({ preventScroll: true });
}
