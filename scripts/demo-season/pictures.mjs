/**
 * The log's pictures: our own plain drawings, set down as SVG and saved as JPEG so that the site has
 * something to resize. No lettering in them, so they look the same whatever fonts a machine has.
 */

import sharp from "sharp";
import { createRandom } from "./random.mjs";

const WIDTH = 1200;
const HEIGHT = 800;
const PAPER = "#f3ecdd";
const INK = "#33291f";
const STEEL = "#c3c7c6";
const SHADE = "#a7adad";
const FOAM = "#fbf6e6";
const BEER = "#d9972f";
const LEAF = "#7f9a4a";

/** @param {string} body @returns {string} */
function sheet(body) {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}" viewBox="0 0 ${WIDTH} ${HEIGHT}">
<rect width="${WIDTH}" height="${HEIGHT}" fill="${PAPER}"/>
<g stroke="${INK}" stroke-width="5" stroke-linejoin="round" stroke-linecap="round" fill="none">${body}</g></svg>`;
}

const table = `<path d="M-20 690H1220V820H-20Z" fill="#cdb48c"/><path d="M0 725H1200M0 765H1200" stroke-width="2" opacity=".4"/>`;

/** A scatter of circles: foam, steam, pellets. */
function circles(name, count, place, style) {
  const random = createRandom(`picture ${name}`);
  const drawn = [];
  for (let index = 0; index < count; index += 1) {
    const { x, y, r } = place(random);
    drawn.push(`<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="${r.toFixed(1)}" ${style}/>`);
  }
  return drawn.join("");
}

/** A kettle at a rolling boil, foam at the rim. */
function drawBoil() {
  const foam = circles("boil foam", 70, (random) => ({
    x: 600 + (random.uniform() - 0.5) * 500, y: 268 - random.uniform() * 44, r: 14 + random.uniform() * 26,
  }), `fill="${FOAM}" stroke-width="3"`);
  const steam = [420, 560, 690, 800].map((x, index) =>
    `<path d="M${x} ${190 - index * 8}c-40 -40 40 -60 0 -110s30 -50 10 -80" opacity=".35"/>`).join("");
  return sheet(`${table}${steam}${foam}
<path d="M330 270H870V640Q870 680 830 680H370Q330 680 330 640Z" fill="${STEEL}"/>
<path d="M330 330H870M760 340V640" stroke-width="3" opacity=".5"/><path d="M320 270H880" stroke-width="14"/>
<path d="M330 380q-60 0-60 45t60 45M870 380q60 0 60 45t-60 45"/>
<path d="M870 610h70v22h34" stroke-width="12"/>`);
}

/** A fermenting bucket with its lid off: a cap of foam, a brown ring on the wall. */
function drawKrausen() {
  const foam = circles("krausen", 110, (random) => ({
    x: 600 + (random.uniform() - 0.5) * 560, y: 312 + (random.uniform() - 0.5) * 70, r: 10 + random.uniform() * 30,
  }), `fill="${FOAM}" stroke-width="2.5"`);
  const flecks = circles("flecks", 40, (random) => ({
    x: 600 + (random.uniform() - 0.5) * 470, y: 306 + (random.uniform() - 0.5) * 60, r: 3 + random.uniform() * 5,
  }), `fill="#8a6a35" stroke="none"`);
  return sheet(`${table}<path d="M270 240H930L880 690H320Z" fill="#ece7da"/>
<path d="M276 300H924L884 660H316Z" fill="${BEER}"/>
<clipPath id="inside"><path d="M272 246H928L884 690H316Z"/></clipPath><g clip-path="url(#inside)">${foam}${flecks}</g>
<path d="M270 240H930L880 690H320Z"/><path d="M262 240H938" stroke-width="16"/><path d="M286 390l8 80M300 520l6 60" stroke-width="3" opacity=".5"/>
<path d="M250 250q-34 90 10 190M950 250q34 90 -10 190" stroke-width="6"/>`);
}

/** One straight-sided glass of beer. */
function glass(x, fill, haze) {
  const motes = circles(`glass ${x}`, haze, (random) => ({
    x: x + (random.uniform() - 0.5) * 170, y: 330 + random.uniform() * 310, r: 2 + random.uniform() * 7,
  }), `fill="${FOAM}" stroke="none" opacity=".55"`);
  return `<path d="M${x - 110} 300H${x + 110}L${x + 88} 670H${x - 88}Z" fill="${fill}"/>${motes}
<path d="M${x - 116} 300q0 -58 58 -58q20 -26 58 -18t62 14q54 0 54 62Z" fill="${FOAM}"/>
<path d="M${x - 124} 190L${x - 90} 690H${x + 90}L${x + 124} 190Z"/><path d="M${x + 84} 330L${x + 68} 600" stroke-width="3" opacity=".5"/>`;
}

/** Two samples poured side by side: clear before the hops, hazy after. */
function drawGlasses() {
  return sheet(`${table}${glass(400, BEER, 0)}${glass(790, "#e2b153", 150)}
<path d="M1010 690v-60q0 -20 50 -20t50 20v60Z" fill="#e9d9b6"/><path d="M1025 630q35 -14 70 0" stroke-width="3"/>`);
}

/** One bract of a cone. */
function bract(x, y, size) {
  return `<path d="M${x} ${y}q${-size} ${size * 0.5} 0 ${size * 1.5}q${size} ${-size} 0 ${-size * 1.5}Z" fill="${LEAF}"/>`;
}

/** A hop cone on its bine, with two leaves. */
function drawCone() {
  const rows = [];
  for (let row = 0; row < 8; row += 1) {
    const width = [64, 84, 118, 96, 106, 80, 76, 44][row];
    const inRow = 2 + (row % 2);
    for (let index = 0; index < inRow; index += 1) {
      const x = 620 + (index - (inRow - 1) / 2) * width;
      rows.push(bract(x, 190 + row * 52, 104 - Math.abs(row - 3) * 7));
    }
  }
  return sheet(`<path d="M120 90C330 40 520 70 620 210" stroke-width="9"/>
<path d="M330 66C260 150 250 260 300 330C330 270 390 250 430 300C450 200 420 110 330 66Z" fill="#6c8640"/>
<path d="M330 66L308 300M330 66L420 270" stroke-width="3"/>
<path d="M480 82C560 20 690 20 780 70C720 90 700 120 720 160C640 150 540 140 480 82Z" fill="#6c8640"/>
<path d="M480 82C580 80 660 90 740 80" stroke-width="3"/>${rows.join("")}`);
}

/** A keg with its two lines, beside a gas bottle. */
function drawKeg() {
  return sheet(`${table}<path d="M360 210H640V690H360Z" fill="${STEEL}"/>
<path d="M350 190h300v60H350Z" fill="#4a4a4a"/><path d="M350 640h300v56H350Z" fill="#4a4a4a"/>
<path d="M440 190v-40h30v40M530 190v-40h30v40" fill="${SHADE}"/><path d="M590 270V620" stroke-width="3" opacity=".5"/>
<path d="M545 150C545 60 700 40 780 120S850 250 860 300" stroke="#8a2f22" stroke-width="9"/>
<path d="M455 150C450 60 260 60 200 180S170 470 190 560" stroke="#9c8a5a" stroke-width="9"/>
<path d="M800 400q0 -70 60 -70t60 70V690H800Z" fill="#8f9a8d"/><path d="M845 330v-40h30v40" fill="${SHADE}"/>
<circle cx="900" cy="270" r="38" fill="${FOAM}"/><path d="M900 270l18 -20M875 288a30 30 0 1 1 50 0" stroke-width="3"/>`);
}

/** The creek at low water, seen from the brew shed door. */
function drawCreek() {
  const grass = createRandom("picture grass");
  const tufts = Array.from({ length: 90 }, () => {
    const bank = grass.uniform() * 1000;
    const x = bank < 480 ? bank : bank + 200;
    const y = 470 + grass.uniform() * 90;
    return `<path d="M${x.toFixed(0)} ${y.toFixed(0)}l-7 -24m7 24l2 -30m-2 30l10 -22" stroke="#5d6b39" stroke-width="3"/>`;
  }).join("");
  return sheet(`<path d="M-20 -20H1220V440H-20Z" fill="#d7dcd6"/><path d="M-20 420Q300 400 620 418T1220 410V820H-20Z" fill="#a9a06f"/>
<path d="M560 420C600 520 300 560 420 680Q470 740 430 800H900Q880 700 760 640C620 570 690 500 600 420Z" fill="#9fb0b0"/>
<path d="M0 640Q180 610 330 690T420 800H0Z" fill="#8b7a58"/>${tufts}
<path d="M700 610l150 26q70 0 110 -46l-240 -24Z" fill="#e9dfca"/><path d="M820 580L836 330M836 340L930 560L826 566" stroke-width="4"/>
<path d="M90 420v-60l70 -40l70 40v60Z" fill="#7a4a35"/><path d="M140 420v-44h36v44" fill="${INK}"/>
<path d="M900 150q26 -22 44 0q20 -22 46 -2M1010 210q18 -16 32 0q14 -16 34 -2" stroke-width="4"/>`);
}

/** Where each drawing goes, from the log's root. @type {Record<string, () => string>} */
const DRAWINGS = {
  "batches/2026-01-tideline-3/boil.jpg": drawBoil,
  "batches/2026-02-spring-tide/creek.jpg": drawCreek,
  "batches/2026-03-slack-water/krausen.jpg": drawKrausen,
  "batches/2026-05-tideline-6/glasses.jpg": drawGlasses,
  "batches/2026-06-tideline-7/cone.jpg": drawCone,
  "batches/2026-04-wrackline/keg.jpg": drawKeg,
};

/** @returns {Promise<[string, Buffer][]>} path and JPEG of each picture */
export async function drawPictures() {
  /** @type {[string, Buffer][]} */
  const pictures = [];
  for (const [path, draw] of Object.entries(DRAWINGS)) {
    const jpeg = await sharp(Buffer.from(draw())).flatten().jpeg({ quality: 78, chromaSubsampling: "4:2:0" }).toBuffer();
    pictures.push([path, jpeg]);
  }
  return pictures;
}
