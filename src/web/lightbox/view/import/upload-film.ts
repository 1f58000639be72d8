import type { FilmImported, RefusalView } from "../../../../server/api.ts";
import { Refused } from "../../../record/api.ts";

/** A film's bytes on their way, with what is told meanwhile. */
export interface Upload {
  readonly caseId: string;
  readonly query: string;
  readonly bytes: Blob;
  readonly progress: (fraction: number) => void;
}

/** Sends a file as it is to be taken in; a request of the old kind, because only that tells how far it is. Fails with {@link Refused}. */
export function uploadFilm({ caseId, query, bytes, progress }: Upload): Promise<FilmImported> {
  return new Promise((done, failed) => {
    const request = new XMLHttpRequest();
    request.open("POST", `/api/cases/${caseId}/films?${query}`);
    request.setRequestHeader("content-type", "application/octet-stream");
    request.responseType = "json";
    request.upload.onprogress = ({ loaded, total }) => progress(total > 0 ? loaded / total : 0);
    request.onload = () => {
      const answer: unknown = request.response;
      if (request.status < 300 && isImported(answer)) done(answer);
      else failed(refusedBy(answer, request.status));
    };
    request.onerror = () =>
      failed(new Refused("unreachable", "Cannot take in the film: the program does not answer. Is it still running?"));
    request.send(bytes);
  });
}

const isImported = (answer: unknown): answer is FilmImported =>
  typeof answer === "object" && answer !== null && "partId" in answer && "case" in answer;

const isRefusal = (answer: unknown): answer is RefusalView =>
  typeof answer === "object" && answer !== null && "code" in answer && "message" in answer;

const refusedBy = (answer: unknown, status: number): Refused =>
  isRefusal(answer)
    ? new Refused(answer.code, answer.message, answer.facts ?? {}, answer.faults ?? [])
    : new Refused("bug", `Cannot take in the film: the program answered with status ${status} and no words.`);
