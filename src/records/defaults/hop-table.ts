/**
 * Usual alpha acids and oil of public hop cultivars, for what a record leaves out. A lot's own analysis
 * always goes before them.
 *
 * name | alpha, % | oil, mL/100g | status | source; low..high where only a range is published, - where nothing is.
 */
export const HOP_TABLE = `
Cascade|6.3|1.24|published|USDA-ARS hop cultivar description 21092
Centennial|9..12|2.83|published|USDA-ARS hop cultivar description 21507
Chinook|12..14|1.7..2.7|published|Hop Growers of America variety data
Columbus|14..18|1.5..4.5|from memory|-
Crystal|2.8..4.4|0.82|published|USDA-ARS hop cultivar description 21490
Mt. Hood|4..7|1.2..1.7|published|USDA-ARS hop cultivar description 21455
Liberty|4..6|1.3|published|USDA-ARS hop cultivar description 21457
Nugget|13.5|1.56|published|USDA-ARS hop cultivar description 21193
Sterling|6..9|1.3..1.9|from memory|-
Perle|4..9|0.5..1.5|from memory|-
Tettnanger (Swiss clone)|4.7|0.66|published|USDA-ARS hop cultivar description 61021
Tettnanger (German)|4.5|0.56|published|USDA-ARS hop cultivar description 21015
US Tettnanger (Fuggle-like)|5.8|0.87|published|USDA-ARS hop cultivar description 21197
Saaz (Saazer)|3..4|0.5..0.8|published|USDA-ARS hop cultivar description 21532
Fuggle|5.1|0.60|published|USDA-ARS hop cultivar description 19209
East Kent Golding|5..6|0.85|published|USDA-ARS hop cultivar description 21680
Petham Golding|6.9|1.15|published|USDA-ARS hop cultivar description 68052
Hallertau Mittelfrueh|3.3..5.5|0.8|published|USDA-ARS hop cultivar description 21014
Hersbrucker (red-stem)|5..6|1.20|published|USDA-ARS hop cultivar description 21517
Northern Brewer|9..12|1.0..2.0|from memory|The Oxford Companion to Beer
Brewer's Gold|9.2|1.96|published|USDA-ARS hop cultivar description 19001
Bullion|6.5..9|-|published|trade profile list, 1997
Cluster|5.5..8.5|0.4..0.8|from memory|trade profile list, 1997
Galena|11.5..13.5|0.9..1.3|from memory|Hop Growers of America variety data
Horizon|11..13|1.5..2.0|from memory|Hop Growers of America variety data
`;

/** Short names under which a cultivar of the table is also found. */
export const HOP_ALIASES: Readonly<Record<string, string>> = {
  Saaz: "Saaz (Saazer)",
  Tettnanger: "Tettnanger (German)",
  "US Tettnanger": "US Tettnanger (Fuggle-like)",
  Hersbrucker: "Hersbrucker (red-stem)",
};
