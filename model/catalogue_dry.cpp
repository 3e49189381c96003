#include "model/catalogue_table.h"

namespace model::tables {

std::string_view dryFood() {
    return R"(
chopped tomatoes; tinned tomatoes; diced tomatoes; plum tomatoes | tins/tomato tins | tin 400 g, 150-850 | can metal | 7.5 7.5 11 .48 | 2 .5 .3 | dry F hob | - | - | bb 373
kidney beans; red kidney beans | tins/bean tins | tin 400 g, 150-850 | can metal | 7.5 7.5 11 .48 | 1 .25 .3 | dry F hob | - | - | bb 372
baked beans | tins/bean tins | tin 415 g, 150-850 | can metal | 7.5 7.5 11 .49 | 2 .5 .2 | dry F hob | - | - | bb 372
chickpeas; garbanzo beans | tins/bean tins | tin 400 g, 150-850 | can metal | 7.5 7.5 11 .48 | 1 .25 .3 | dry F hob | - | - | bb 372
butter beans; lima beans | tins/bean tins | tin 400 g, 150-850 | can metal | 7.5 7.5 11 .48 | .5 .12 .3 | dry F hob | - | - | bb 372
sweetcorn; canned corn; corn kernels | tins/vegetable tins | tin 200 g, 75-400 | can metal | 7.5 7.5 8 .29 | 1 .25 .3 | dry F hob | - | - | bb 372
tinned peas; garden pea tin | tins/vegetable tins | tin 300 g, 100-500 | can metal | 7.5 7.5 11 .37 | 1 .25 .3 | dry F hob | - | - | bb 372
coconut milk | tins/cooking tins | tin 400 ml, 150-850 | can metal | 7.5 7.5 11 .48 | .5 .15 .4 | dry F hob | - | - | bb 602
tuna; tinned tuna; tuna chunks | tins/fish tins | tin 145 g, 50-300 | can metal | 8.5 8.5 4 .19 | 1 .5 .2 | dry F prep | fish | m | bb 618
sardines | tins/fish tins | tin 120 g, 50-200 | can metal | 10.5 6 2.5 .16 | .5 .25 .1 | dry F prep | fish | m | bb 619
soup; tinned soup; tomato soup | tins/soup tins | tin 400 g, 150-850 | can metal | 7.5 7.5 11 .48 | 1 .4 .4 | dry F hob | ?milk ?celery | - | bb 372
peach slices; tinned peach; tinned fruit; fruit cocktail | tins/fruit tins | tin 410 g, 150-850 | can metal | 7.5 7.5 11 .49 | .5 .2 .4 | dry F prep | - | m | bb 373
rice pudding | tins/pudding tins | tin 400 g, 150-850 | can metal | 7.5 7.5 11 .48 | .5 .2 .2 | dry F hob | milk | m | bb 372
dog food; cat food; pet food | pets/pet tins | tin 400 g, 150-850 | can metal | 7.5 7.5 11 .48 | 7 2 .2 | dry N entry | - | m | -
custard powder | baking/puddings | canister 300 g, 100-750 | canister card | 8 8 14 .36 | .5 .05 .6 | dry F hob | ?milk | m | bb 395
flour; plain flour; all-purpose flour; white flour | baking/flours | bag 1.5 kg, 0.5-4 | bag paper | 11 8 18 1.5 | 1 .1 .3 | dry F prep | gluten | m | bb 222
self-raising flour; self raising flour; SR flour | baking/flours | bag 1.5 kg, 0.5-4 | bag paper | 11 8 18 1.5 | .5 .05 .3 | dry F prep | gluten | m | bb 222
wholemeal flour; whole wheat flour; bread flour | baking/flours | bag 1.5 kg, 0.5-4 | bag paper | 11 8 18 1.5 | .5 .05 .3 | dry F prep | gluten | m | bb 223
rice flour; gluten-free flour | baking/flours | bag 1 kg, 0.4-5 | bag paper | 10 7 16 1 | .5 .05 .3 | dry F prep | - | m | bb 220
cornflour; cornstarch | baking/thickeners | box 250 g, 100-500 | box card | 9 5 14 .28 | .5 .05 .4 | dry F hob | - | m | bb 220
sugar; white sugar; granulated sugar | baking/sugars | bag 1 kg, 0.4-5 | bag paper | 10 7 15 1 | 7 .2 .6 | dry F prep | - | m | bb 240
caster sugar | baking/sugars | bag 1 kg, 0.4-5 | bag paper | 10 7 15 1 | .5 .05 .6 | dry F prep | - | m | bb 240
brown sugar | baking/sugars | bag 500 g, 200-1500 | bag plastic | 9 6 13 .5 | .5 .05 .4 | dry F prep | - | m | bb 239
icing sugar; confectioners sugar; powdered sugar | baking/sugars | box 500 g, 200-1000 | box card | 9 6 14 .54 | .2 .03 .3 | dry F prep | - | m | bb 241
salt; table salt | seasoning/salt | canister 750 g, 200-2000 | canister plastic | 7.5 7.5 17 .78 | 7 .05 .7 | dry F hob | - | m | bb 468
baking powder | baking/raising agents | canister 170 g, 50-400 | canister card | 6 6 11 .2 | .3 .03 .6 | dry F prep | - | m | bb 212
bicarbonate of soda; baking soda | baking/raising agents | canister 200 g, 50-500 | canister card | 6 6 11 .23 | .2 .03 .6 | dry F prep | - | m | bb 213
yeast; dried yeast | baking/raising agents | canister 125 g, 40-300 | canister metal | 6.5 6.5 8 .16 | .3 .03 .7 | dry F prep | - | m | bb 561
cocoa; cocoa powder | baking/chocolate | canister 250 g, 75-500 | canister card | 8 8 14 .3 | .5 .05 .4 | dry F prep | ?milk | m | bb 217
cooking chocolate; dark chocolate | baking/chocolate | packet 200 g, 75-500 | packet foil | 16 2 8 .2 | .5 .1 .1 | dry F prep | ?milk ?nuts soya | - | bb 216
raisins; sultana; currants | baking/dried fruit | bag 500 g, 200-1500 | bag plastic | 12 6 17 .5 | 1 .1 .4 | dry F prep | ?sulphites | - | bb 379
ground almonds; almond flour | baking/nuts | bag 200 g, 75-500 | bag plastic | 11 4 15 .2 | .3 .05 .3 | dry F prep | nuts | m | bb 438
vanilla essence; vanilla extract | baking/flavours | bottle 38 ml, 15-100 | bottle glass | 4 4 11 .1 | .2 .02 .4 | dry F prep | - | m | bb 530
rice; white rice; jasmine rice; wild rice; easy cook rice; long grain rice; basmati rice | grains/rice | bag 1 kg, 0.4-5 | bag plastic | 12 7 18 1 | 2 .2 .8 | dry F hob | - | - | bb 338
brown rice | grains/rice | bag 1 kg, 0.4-5 | bag plastic | 12 7 18 1 | .5 .1 .8 | dry F hob | - | - | bb 339
pasta; penne; macaroni; fusilli | grains/pasta | bag 500 g, 200-1500 | bag plastic | 14 8 20 .5 | 2 .3 .9 | dry F hob | gluten | - | bb 335
spaghetti | grains/pasta | packet 500 g, 200-1500 | packet plastic | 7 5 26 .5 | 1 .2 .8 | dry F hob | gluten | - | bb 335
egg noodles; noodle | grains/noodles | packet 250 g, 100-750 | packet plastic | 13 9 18 .26 | .5 .2 .5 | dry F hob | gluten eggs | - | bb 336
glass noodles | grains/noodles | packet 200 g, 75-500 | packet plastic | 12 6 22 .2 | .3 .1 .5 | dry F hob | - | - | bb 335
rice noodles; rice vermicelli | grains/noodles | packet 200 g, 75-500 | packet plastic | 12 6 22 .2 | .3 .1 .5 | dry F hob | - | - | bb 335
couscous | grains/couscous | box 500 g, 200-1000 | box card | 10 6 17 .54 | .5 .1 .8 | dry F hob | gluten | - | bb 637
red lentils; lentil | grains/pulses | bag 500 g, 200-1500 | bag plastic | 11 6 15 .5 | .5 .1 .8 | dry F hob | - | - | bb 334
split peas; dried pea | grains/pulses | bag 500 g, 200-1500 | bag plastic | 11 6 15 .5 | .3 .1 .9 | dry F hob | - | - | bb 337
porridge oats; oat; rolled oat | breakfast/oats | box 1 kg, 0.4-2 | box card | 13 9 24 1.05 | 5 .2 .5 | dry F hob | gluten | - | bb 375
corn flakes; breakfast cereal; cereal; bran flakes | breakfast/cereals | box 500 g, 200-1000 | box card | 19 7 30 .56 | 7 .5 .7 | dry F prep | gluten | - | bb 374
muesli | breakfast/cereals | bag 750 g, 300-2000 | bag plastic | 15 8 22 .76 | 3 .3 .7 | dry F prep | gluten nuts | - | bb 374
honey | breakfast/spreads | jar 340 g, 150-750 | jar glass | 7 7 11 .54 | 2 .1 .1 | dry F prep | - | - | bb 345
jam; strawberry jam; raspberry jam | breakfast/spreads | jar 340 g, 150-750 | jar glass | 7 7 11 .54 | 4 .2 .1 | dry F prep | - | - | bb 347
marmalade | breakfast/spreads | jar 340 g, 150-750 | jar glass | 7 7 11 .54 | 4 .2 .1 | dry F prep | - | - | bb 347
peanut butter; crunchy peanut butter; smooth peanut butter | breakfast/spreads | jar 340 g, 150-750 | jar glass | 7.5 7.5 11 .54 | 2 .1 .1 | dry F prep | peanuts | m | bb 387
yeast extract | breakfast/spreads | jar 250 g, 100-500 | jar glass | 7 7 9 .45 | 1 .05 .1 | dry F prep | gluten celery | m | bb 351
chocolate spread; hazelnut spread | breakfast/spreads | jar 350 g, 200-1000 | jar glass | 8 8 11 .6 | 1 .1 .1 | dry F prep | milk nuts soya | - | bb 615
golden syrup; syrup | baking/syrups | bottle 350 g, 150-1000 | bottle plastic | 7 5 18 .4 | .5 .05 .2 | dry F prep | - | - | bb 398
tea; tea bag | hot drinks/tea | box 80 bags | box card | 13 8 13 .28 | 21 .2 .4 | dry F hob | - | - | bb 410
herbal tea; fruit tea; mint tea; peppermint tea; camomile tea | hot drinks/tea | box 20 bags | box card | 13 7 8 .06 | 3 .1 .4 | dry F hob | - | - | bb 410
coffee; instant coffee; coffee granules | hot drinks/coffee | jar 200 g, 100-500 | jar glass | 9 9 17 .5 | 14 .2 .6 | dry F hob | - | - | bb 402
ground coffee; filter coffee; coffee bean | hot drinks/coffee | bag 227 g, 100-750 | bag foil | 9 6 17 .24 | 5 .3 .3 | dry F hob | - | - | bb 541
hot chocolate; drinking chocolate | hot drinks/chocolate drinks | canister 500 g, 150-1000 | canister card | 9 9 16 .58 | 2 .1 .5 | dry F hob | milk | - | bb 217
milk powder; dried milk; powdered milk | hot drinks/milk powder | canister 400 g, 100-1000 | canister metal | 10 10 15 .5 | 1 .1 .5 | dry F hob | milk | m | bb 465
sweetener; artificial sweetener | hot drinks/sweeteners | canister 300 tablets | tub plastic | 5 3 7 .03 | 7 .1 .8 | dry F hob | - | m | bb 242
squash; orange squash; lemon squash; blackcurrant squash; cordial | cold drinks/squash | bottle 1 l, 0.4-3 | bottle plastic | 8 8 28 1.1 | 7 .5 .4 | dry F sink | - | - | bb 404
olive oil | oils/oils | bottle 500 ml, 200-1500 | bottle glass | 7 7 27 .95 | 5 .15 .4 | dry F hob | - | m | bb 227
sunflower oil; vegetable oil; cooking oil | oils/oils | bottle 1 l, 0.4-3 | bottle plastic | 8 8 28 1 | 3 .15 .4 | dry F hob | - | m | bb 227
vinegar; malt vinegar; white vinegar | oils/vinegars | bottle 250 ml, 100-750 | bottle glass | 6 6 21 .5 | 1 .05 .4 | dry F prep | ?gluten ?sulphites | m | bb 361
wine vinegar; white wine vinegar; red wine vinegar; balsamic vinegar; cider vinegar | oils/vinegars | bottle 250 ml, 100-750 | bottle glass | 6 6 22 .5 | 1 .05 .4 | dry F prep | sulphites | m | bb 361
soy sauce | sauces/table sauces | bottle 150 ml, 50-400 | bottle glass | 5.5 5.5 16 .33 | 1 .08 .4 | dry F hob | soya gluten | m | bb 360
ketchup; tomato ketchup; tomato sauce | sauces/table sauces | bottle 460 g, 200-1500 | bottle plastic | 7 5 19 .5 | 3 .15 .2 | dry F table | ?celery | - | bb 348
brown sauce | sauces/table sauces | bottle 425 g, 150-1500 | bottle plastic | 7 5 19 .47 | 1 .08 .2 | dry F table | gluten fish | - | bb 348
mustard | sauces/table sauces | jar 185 g, 100-500 | jar glass | 6.5 6.5 8 .33 | 1 .05 .1 | dry F table | mustard | m | bb 351
pasta sauce; tomato pasta sauce | sauces/cooking sauces | jar 500 g, 200-1000 | jar glass | 8 8 15 .8 | 1 .4 .3 | dry F hob | ?milk | - | bb 599
curry paste; curry sauce | sauces/cooking sauces | jar 280 g, 150-750 | jar glass | 7 7 11 .47 | .5 .1 .1 | dry F hob | mustard | m | bb 560
pickle; chutney; gherkins | sauces/pickles | jar 350 g, 200-1000 | jar glass | 7.5 7.5 11 .55 | 1 .1 .2 | dry F table | ?gluten sulphites | - | bb 353
olives | sauces/pickles | jar 340 g, 150-750 | jar glass | 7.5 7.5 13 .55 | .5 .1 .3 | dry F table | - | - | bb 352
tomato puree; tomato paste | sauces/cooking sauces | tube 200 g, 75-400 | tube metal | 5 4 17 .22 | 1 .1 0 | dry F hob | - | - | bb 501
gravy granules; gravy | sauces/stock | canister 200 g, 50-500 | canister card | 8 8 14 .25 | 1 .1 .6 | dry F hob | gluten | m | bb 343
stock cubes | sauces/stock | box 8 cubes | box card | 7 4 6 .09 | 2 .2 .5 | dry F hob | celery ?gluten | - | bb 396
pepper; black pepper; ground pepper | seasoning/spices | jar 50 g, 20-100 | jar glass | 4.5 4.5 10 .13 | 7 .05 .5 | dry F hob | - | m | bb 469
cinnamon | seasoning/spices | jar 40 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F prep | - | m | bb 472
curry powder | seasoning/spices | jar 45 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F hob | ?mustard | m | bb 233
chilli powder; chilli flakes; cayenne pepper | seasoning/spices | jar 45 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F hob | - | m | bb 232
paprika | seasoning/spices | jar 45 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F hob | - | m | bb 238
cumin; ground cumin | seasoning/spices | jar 45 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F hob | - | m | bb 473
turmeric; ground turmeric | seasoning/spices | jar 45 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F hob | - | m | bb 238
ginger; ground ginger | seasoning/spices | jar 40 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .3 .03 .4 | dry F prep | - | m | bb 238
nutmeg | seasoning/spices | jar 40 g, 20-100 | jar glass | 4.5 4.5 10 .12 | .2 .02 .5 | dry F prep | - | m | bb 476
mixed herbs; dried herbs; oregano; thyme | seasoning/herbs | jar 20 g, 10-50 | jar glass | 4.5 4.5 10 .1 | 1 .03 .4 | dry F hob | - | - | bb 236
bay leaves | seasoning/herbs | jar 5 g, 2-10 | jar glass | 4.5 4.5 10 .09 | .3 .02 .2 | dry F hob | - | - | bb 236
garlic granules; garlic powder | seasoning/spices | jar 50 g, 20-100 | jar glass | 4.5 4.5 10 .13 | .5 .03 .5 | dry F hob | - | m | bb 474
crackers; cream cracker; crispbread | snacks/crackers | packet 300 g, 100-1000 | packet plastic | 7 7 20 .31 | 2 .2 .3 | dry F table | gluten | - | bb 377
biscuits; graham crackers; digestive biscuit; cookies; ginger nuts; digestives | snacks/biscuits | packet 400 g, 150-1000 | packet plastic | 7 7 22 .41 | 7 .5 .3 | dry F table | gluten ?milk ?nuts | - | bb 200
crisps | snacks/crisps | bag 150 g, 50-400 | bag foil | 18 8 25 .16 | 2 .5 .7 | dry F table | ?milk | - | bb 392
mixed nuts; nuts | snacks/nuts | bag 200 g, 75-500 | bag foil | 13 4 18 .2 | 1 .2 .6 | dry F table | nuts peanuts | m | bb 386
chocolate; chocolate bar | snacks/chocolate | packet 180 g, 75-500 | packet foil | 16 2 8 .19 | 2 .5 .1 | dry F table | milk soya ?nuts | - | bb 216
cereal bars | snacks/biscuits | box 6 bars | box card | 15 5 10 .2 | 3 .3 .4 | dry F table | gluten ?nuts | - | bb 658
bread; loaf; sliced bread | bakery/bread | bag 800 g, 300-2000 | bag plastic | 12 12 26 .8 | 10 1 0 | dry F prep | gluten | - | bb 195
tortilla wraps; wraps | bakery/bread | packet 8 wraps | packet plastic | 22 3 24 .5 | 1 .2 0 | dry F prep | gluten | - | bb 196
potatoes | fresh/vegetables | bag 2 kg, 0.75-6 | bag plastic | 25 15 20 2 | 4 .5 .4 | dry F sink | - | - | - 297
onions; red onions; white onions | fresh/vegetables | bag 1 kg, 0.4-3 | bag plastic | 20 13 14 1 | 3 .3 .3 | dry F prep | - | - | - 294
bananas | fresh/fruit | bunch 5 | other plastic | 20 15 12 .8 | 5 1 0 | dry F table | - | - | - 251
apples | fresh/fruit | bag 6 | bag plastic | 20 14 12 .9 | 5 1 .2 | dry F table | - | - | - 248
)";
}

} // namespace model::tables
