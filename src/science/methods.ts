import { type MethodAbout } from "./method-about.js";
import { methodSubjects } from "./method-subject.js";
import { type Described } from "./method.js";
import * as relations from "./relations.js";

/** The one list of methods: every relation of `relations.ts`, by subject and then by id. */
export const methods: readonly Described[] = Object.values<Described>(relations).toSorted(
  (a, b) => subjectOrder(a.about) - subjectOrder(b.about) || (a.about.id < b.about.id ? -1 : 1),
);

/** What is known of every method, in the same order: for the methods pages. */
export const methodAbouts: readonly MethodAbout[] = methods.map(({ about }) => about);

function subjectOrder({ subject }: MethodAbout): number {
  return methodSubjects.indexOf(subject);
}
