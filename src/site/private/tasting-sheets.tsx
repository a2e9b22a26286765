import type { TastingPlan } from "../../report/index.js";
import { Ballot } from "./ballot.js";
import { KeySheet } from "./key-sheet.js";
import { PlanSheet } from "./plan-sheet.js";
import { PouringSheet } from "./pouring-sheet.js";
import type { PrivateInputs, PrivateSheet } from "./private-sheet.js";

/** What a tasting needs on paper, in the order it is needed. */
export function tastingSheets({ report }: PrivateInputs): PrivateSheet[] {
  return report.tastings.flatMap((plan) => {
    const named = (what: string): string => (report.tastings.length === 1 ? what : `${what}, tasting ${plan.number}`);
    const head = `${report.club.name}, ${report.name}`;
    return [
      {
        path: pathOf(plan, "plan"), title: named("The plan"), eyes: "for whoever runs it",
        says: "Which test, what so many tasters can find with it, and how to serve: read before anyone is invited.",
        content: () => <PlanSheet plan={plan} head={head} />,
      },
      {
        path: pathOf(plan, "pouring"), title: named("The pouring sheet"), eyes: "for the pourer only",
        says: "Which sample goes into which cup, in the order of the places.",
        content: () => <PouringSheet plan={plan} head={head} />,
      },
      {
        path: pathOf(plan, "ballots"), title: named("The ballots"), marginTitle: "Tasting", eyes: "one page a taster",
        says: "They don't say what is poured or what it was meant to do.",
        content: () => plan.rounds[0]?.servings.map(({ taster }, place) => <Ballot key={taster} plan={plan} place={place} head={report.club.name} />),
      },
      {
        path: pathOf(plan, "key"), title: named("The key"), eyes: "sealed until all have finished",
        says: "What was in each cup, what is right, and how to write the result into the record. Print it, fold it unread, and put it away.",
        content: () => <KeySheet plan={plan} head={head} />,
      },
    ];
  });
}

const pathOf = ({ number }: TastingPlan, what: string): string => `tasting-${number}-${what}.html`;
