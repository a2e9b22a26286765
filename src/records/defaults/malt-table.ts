/**
 * Usual extract and colour of malts, sugars and extracts, for what a record leaves out. Extract of malts is
 * on dry basis, with the moisture beside it; of sugars and malt extracts it is as they come, water counted in.
 *
 * name | extract, % | moisture, % | colour, degrees Lovibond, low..high | status. Moisture is common practice.
 */
export const MALT_TABLE = `
2-row lager/pale malt|80|4|1.4..2.0|published
6-row base malt|76|4|1.5..2.1|published
2-row pale ale malt|81|4|2.0..3.5|published
Pilsner malt (German)|80|4|1.0..2.0|common practice
Vienna malt|75|4|2.0..4.0|published
Munich malt|75|4|6..10|from memory
Wheat malt|79|4|1.7..2.1|published
Rye malt|63|4|2.0..4.7|published
Biscuit/toasted malt|75|4|22.5..27|published
Brown malt|70|4|38..70|published
Dextrin malt|70|4|1.3..2.2|published
Light crystal 10-15 L|75|4|10..15|published
Pale crystal 25-40 L|74|4|25..40|published
Medium crystal 60-75 L|74|4|60..75|published
Dark crystal 120 L|72|4|120..120|published
Extra-dark Belgian caramel|68|4|120..160|from memory
Chocolate malt|60|4|254..558|published
Roast barley|55|4|300..500|from memory
Black malt|55|4|609..812|published
Flaked oats|70|4|1..2.5|from memory
Flaked maize|84|4|0.5..1|from memory
Flaked barley|70|4|1.5..2.2|from memory
Flaked wheat|77|4|1.5..2|from memory
Flaked rice|82|4|0.5..1|from memory
Maltodextrin powder|100|0|0..0|published
Sucrose (cane/beet)|100|0|0..0|published
Dextrose monohydrate|91|0|0..0|from memory
Dry malt extract (pale)|95|0|3..8|from memory
Liquid malt extract (pale)|78|0|3..8|from memory
`;

export const MALT_SOURCE = "J. Palmer, How to Brew, 1st edition, ch. 12, table 9 (extract); trade colour ranges";
