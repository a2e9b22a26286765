import { useLink } from "../page/page-context.js";

/**
 * Makes the button while the page is read, so that nothing moves; loads data and drawing when it is pressed, or
 * when the address already says what to draw.
 */
export const EXPLORE_LOADER = '(function(){var at=document.currentScript,given=at.dataset,host=document.createElement("div"),button=document.createElement("button");'
  + 'host.id="explore-host";host.dataset.batches=given.batches;button.type="button";button.textContent="Choose two figures";'
  + 'function open(by){host.dataset.asked=by;host.className="explore-open";button.disabled=true;[given.season,given.draw].forEach(function(file){'
  + 'var script=document.createElement("script");script.src=file;script.async=false;document.head.append(script)})}'
  + 'button.onclick=function(){open("click")};host.append(button);at.before(host);if(/[#&][xy]=/.test(location.hash))open("address")})()';

export interface SeasonExploreProps {
  /** Path in the site of the season's numbers as a script. */
  readonly dataPath: string;
}

/** Any two figures and a grouping, drawn in the browser when asked for; the page is complete without it. */
export function SeasonExplore({ dataPath }: SeasonExploreProps) {
  const link = useLink();
  const batches = link("batches/index.html").replace(/index\.html$/u, "");
  return (
    <section class="explore screen-only" id="explore">
      <h2>Look for yourself</h2>
      <p>
        Any figure of the season against any other. What is chosen stands in the address, so a view can be passed on. A pattern that is found by
        looking is a guess: only batches brewed after it was found can confirm it.
      </p>
      <script data-season={link(dataPath)} data-draw={link("assets/season-explore.js")} data-batches={batches} dangerouslySetInnerHTML={{ __html: EXPLORE_LOADER }} />
      <noscript><p>Drawing needs a script, which this browser doesn’t run. The same numbers are in <a href={link("data/figures.csv")}>the table of all figures</a>.</p></noscript>
    </section>
  );
}
