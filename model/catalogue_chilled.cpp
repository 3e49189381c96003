#include "model/catalogue_table.h"

namespace model::tables {

std::string_view moreCold() {
    return R"(
buttermilk | dairy/milk | carton 284 ml, 250-500 | tub plastic | 7 7 10 .3 | .3 .1 .5 | fridge F fridge | milk | m | ub 2
lactose-free milk | dairy/milk | carton 1 l, 0.5-1 | box card | 9 7 20 1.1 | 7 1 .5 | fridge F fridge | milk | m | ub 659
goat milk; goats milk; sheep milk | dairy/milk | carton 1 l, 0.5-1 | box card | 9 7 20 1.1 | 7 1 .5 | fridge F fridge | milk | m | ub 27
coconut drink; coconut milk drink | dairy/plant milk | carton 1 l, 0.5-1 | box card | 8 7 20 1.1 | 5 1 .5 | fridge F fridge | - | m | ub 429
lard; dripping; beef dripping; duck fat | dairy/cooking fats | packet 250 g, 200-500 | packet foil | 11 7 4 .25 | .5 .05 0 | fridge F fridge | - | m | bb 524
grated cheese; grated cheddar | dairy/cheese | bag 250 g, 100-500 | bag plastic | 17 5 20 .25 | 3 .4 .2 | fridge F fridge | milk | - | ub 5
mozzarella | dairy/cheese | bag 125 g, 125-250 | bag plastic | 11 7 8 .23 | .5 .3 .2 | fridge F fridge | milk | - | ub 7
parmesan; grated parmesan | dairy/cheese | tub 80 g, 60-250 | tub plastic | 7 7 12 .1 | 1 .1 .3 | fridge F fridge | milk ?eggs | - | bb 4
feta; halloumi; goat cheese; brie; blue cheese; stilton | dairy/cheese | packet 200 g, 100-250 | packet plastic | 11 8 4 .21 | 1 .3 .1 | fridge F fridge | milk ?eggs | - | ub 7
cheese slices; processed cheese | dairy/cheese | packet 200 g, 150-400 | packet plastic | 10 9 3 .21 | 3 .3 0 | fridge F fridge | milk | - | bb 6
cheese spread; cheese triangles | dairy/cheese | box 140 g, 120-300 | box card | 11 11 3 .16 | 3 .3 .1 | fridge F fridge | milk | - | bb 6
cheese strings; snack cheese | dairy/cheese | bag 160 g, 80-320 | bag plastic | 15 3 18 .17 | 3 .4 .1 | fridge F fridge | milk | - | bb 544
vegan cheese; dairy-free cheese | dairy/plant dairy | packet 200 g, 150-400 | packet plastic | 11 8 4 .21 | 2 .3 .1 | fridge F fridge | ?nuts ?soya | m | bb 545
creme fraiche; soured cream; sour cream | dairy/cream | tub 300 ml, 150-500 | tub plastic | 9 9 8 .33 | 1 .3 .2 | fridge F fridge | milk | - | ub 15
squirty cream; spray cream | dairy/cream | can 250 ml, 250-500 | can metal | 5.5 5.5 20 .3 | .3 .1 .2 | fridge F fridge | milk | - | ub 30
fromage frais; quark | dairy/yoghurt | tub 500 g, 250-500 | tub plastic | 10 10 9 .53 | 2 .5 .1 | fridge F fridge | milk | - | ub 546
soya yoghurt; soy yoghurt | dairy/plant dairy | tub 500 g, 125-500 | tub plastic | 10 10 11 .53 | 4 .7 .2 | fridge F fridge | soya ?nuts | m | ub 33
oat yoghurt; coconut yoghurt | dairy/plant dairy | tub 500 g, 125-500 | tub plastic | 10 10 11 .53 | 4 .7 .2 | fridge F fridge | ?gluten ?soya ?nuts | m | ub 33
yoghurt drink; probiotic drink; kefir | dairy/yoghurt | bottle 100 ml, 65-500 | bottle plastic | 4 4 8 .11 | 7 .7 .4 | fridge F fridge | milk | - | ub 25
rice pudding pot; chocolate pudding; trifle; custard pot | dairy/chilled puddings | tub 120 g, 75-500 | tub plastic | 8 8 7 .13 | 3 .7 .1 | fridge F fridge | milk ?eggs ?gluten | - | ub 28
fresh custard | dairy/chilled puddings | tub 500 g, 150-500 | tub plastic | 10 10 9 .53 | .5 .3 .2 | fridge F fridge | milk eggs | m | ub 28
cheesecake; cream cake | dairy/chilled puddings | box 400 g, 90-600 | box card | 19 19 7 .45 | .3 .1 .1 | fridge F fridge | milk eggs gluten | - | ub -
cooked chicken; chicken slices; roast chicken slices | meat and fish/cooked meat | packet 150 g, 100-300 | packet plastic | 18 2 13 .16 | 2 .7 0 | fridge F fridge | - | - | ub 517
turkey slices; sliced turkey | meat and fish/cooked meat | packet 120 g, 80-300 | packet plastic | 18 1.5 13 .13 | 1 .5 0 | fridge F fridge | - | - | ub 514
salami; chorizo; pepperoni | meat and fish/cooked meat | packet 100 g, 70-300 | packet plastic | 18 1.5 13 .11 | 1 .3 0 | fridge F fridge | ?milk | - | ub 516
pate; liver pate | meat and fish/cooked meat | tub 170 g, 100-200 | tub plastic | 11 9 4 .19 | 1 .3 0 | fridge F fridge | milk ?eggs | - | ub 563
pork pie; sausage rolls; pasties | ready food/savoury pastry | packet 300 g, 60-500 | packet plastic | 18 12 6 .31 | 1 .5 .1 | fridge F fridge | gluten ?eggs ?milk | - | ub -
quiche; scotch eggs | ready food/savoury pastry | packet 300 g, 100-500 | packet plastic | 20 20 5 .33 | .5 .1 0 | fridge F fridge | gluten eggs ?milk | - | ub -
sausages; pork sausages; raw sausages | meat and fish/raw meat | packet 400 g, 300-700 | tub plastic | 20 14 4 .42 | 1 .5 0 | fridge F fridge | ?gluten ?sulphites | - | ub 102
beef steak; steak; stewing steak; diced beef; braising steak | meat and fish/raw meat | packet 400 g, 200-800 | tub plastic | 20 15 4 .43 | 1 .5 0 | fridge F fridge | - | - | ub 40
beef joint; roasting joint | meat and fish/raw meat | packet 1 kg, 0.7-2.5 | packet plastic | 20 13 10 1.02 | .3 .2 0 | fridge F fridge | - | - | ub 36
pork chops; pork steaks; diced pork; gammon | meat and fish/raw meat | packet 500 g, 250-900 | tub plastic | 20 15 5 .53 | 1 .5 0 | fridge F fridge | - | - | ub 64
minced pork; pork mince; ground pork | meat and fish/raw meat | packet 500 g, 250-1000 | tub plastic | 20 15 5 .53 | .5 .3 0 | fridge F fridge | - | - | ub 73
lamb chops; lamb steaks; diced lamb; minced lamb | meat and fish/raw meat | packet 400 g, 200-900 | tub plastic | 20 15 4 .43 | .5 .3 0 | fridge F fridge | - | - | ub 51
whole chicken; roasting chicken | meat and fish/raw meat | packet 1.5 kg, 1-2.5 | packet plastic | 24 18 13 1.55 | .5 .4 0 | fridge F fridge | - | - | ub 113
chicken thighs; chicken drumsticks; chicken legs | meat and fish/raw meat | packet 600 g, 400-2000 | tub plastic | 22 16 6 .63 | 1 .5 0 | fridge F fridge | - | - | ub 118
turkey mince; minced turkey; ground turkey; turkey breast | meat and fish/raw meat | packet 500 g, 250-1000 | tub plastic | 20 15 5 .53 | .5 .3 0 | fridge F fridge | - | - | ub 115
liver; kidney; kidneys | meat and fish/raw meat | packet 350 g, 200-500 | tub plastic | 18 13 4 .37 | .3 .2 0 | fridge F fridge | - | - | ub 77
salmon; salmon fillets; fresh salmon; trout; mackerel fresh | meat and fish/raw fish | packet 240 g, 120-500 | tub plastic | 20 14 4 .26 | 1 .5 0 | fridge F fridge | fish | - | ub 146
white fish; cod; haddock; plaice; smoked haddock | meat and fish/raw fish | packet 280 g, 150-500 | tub plastic | 20 14 4 .3 | 1 .5 0 | fridge F fridge | fish | - | ub 144
prawns; cooked prawns; shrimp; fresh prawns | meat and fish/cooked fish | packet 150 g, 100-400 | tub plastic | 15 11 4 .17 | .5 .3 .1 | fridge F fridge | crustaceans | m | ub 162
mussels; seafood mix; squid | meat and fish/cooked fish | packet 250 g, 150-500 | tub plastic | 18 13 5 .27 | .3 .2 .1 | fridge F fridge | molluscs ?crustaceans ?fish | m | ub 162
crab sticks; seafood sticks | meat and fish/cooked fish | packet 250 g, 100-500 | packet plastic | 15 11 3 .26 | .3 .2 0 | fridge F fridge | fish gluten eggs ?crustaceans | m | ub -
fresh pasta; ravioli; tortellini; gnocchi | ready food/fresh pasta | packet 300 g, 250-600 | packet plastic | 18 5 16 .31 | 1 .5 .2 | fridge F fridge | gluten ?eggs ?milk | - | ub 332
fresh soup; chilled soup | ready food/chilled meals | tub 600 g, 300-600 | tub plastic | 10 10 11 .63 | 1 .5 .4 | fridge F fridge | ?milk celery | - | ub 193
chilled ready meal; fresh ready meal; cottage pie; lasagne ready meal | ready food/chilled meals | box 400 g, 300-900 | box card | 19 14 5 .44 | 3 1 .1 | fridge F fridge | ?milk ?gluten ?celery | - | ub 185
sandwich; sandwiches; wraps ready | ready food/chilled meals | box 200 g, 120-250 | box card | 14 7 12 .2 | 2 1 0 | fridge F fridge | gluten ?milk ?eggs | - | ub -
coleslaw; potato salad; egg mayonnaise | ready food/deli salads | tub 300 g, 150-600 | tub plastic | 11 11 6 .33 | 2 .5 .1 | fridge F fridge | eggs ?mustard ?milk | - | ub 603
guacamole; dip | ready food/dips | tub 200 g, 150-300 | tub plastic | 10 10 5 .22 | 1 .3 .1 | fridge F fridge | ?milk ?fish | - | ub 180
taramasalata | ready food/dips | tub 200 g, 150-300 | tub plastic | 10 10 5 .22 | .5 .2 .1 | fridge F fridge | fish ?gluten ?milk | - | ub -
tzatziki | ready food/dips | tub 200 g, 150-300 | tub plastic | 10 10 5 .22 | .5 .2 .1 | fridge F fridge | milk | - | ub -
veggie burgers; veggie sausages; meat-free mince | ready food/meat free | packet 300 g, 200-500 | packet plastic | 18 13 4 .32 | 1 .4 0 | fridge F fridge | ?soya ?gluten ?eggs | - | ub 168
ready rolled pastry; puff pastry; shortcrust pastry | ready food/pastry | packet 320 g, 300-500 | packet plastic | 25 6 6 .33 | .3 .2 0 | fridge F fridge | gluten ?milk | - | ub 554
smoothie | cold drinks/juice | bottle 750 ml, 250-1000 | bottle plastic | 8 8 22 .8 | 3 .7 .4 | fridge F fridge | - | - | ub -
nutrition drink; supplement drink; milkshake supplement | medicines/nutrition drinks | bottle 200 ml, 125-220 | bottle plastic | 5 5 13 .23 | 14 2 .4 | dry F fridge | milk ?soya | - | bb 651
insulin; insulin pens | medicines/fridge medicines | box 5 pens | box card | 18 7 3 .15 | 14 .1 .2 | fridge N fridge | - | hp | -
eye drops; antibiotic liquid | medicines/fridge medicines | box 10 ml, 2.5-300 | box card | 8 3 4 .03 | 14 .1 .2 | fridge N fridge | - | hp | -
cucumber | fresh/salad and vegetables | piece 1 | other plastic | 6 5 30 .35 | 3 .7 0 | fridge F fridge | - | - | - 283
celery | fresh/salad and vegetables | bag 1 head | bag plastic | 9 8 36 .45 | 1 .3 0 | fridge F fridge | celery | m | - 281
sweet peppers; bell peppers; peppers; red peppers; red pepper; green pepper; green peppers; sweet pepper | fresh/salad and vegetables | bag 3 peppers | bag plastic | 22 9 10 .5 | 2 .5 .1 | fridge F fridge | - | - | - 296
mushrooms; chestnut mushrooms | fresh/salad and vegetables | packet 250 g, 200-500 | tub plastic | 17 11 7 .27 | 2 .5 .1 | fridge F fridge | - | - | - 292
courgettes; courgette; zucchini; marrow | fresh/salad and vegetables | bag 500 g, 250-1000 | bag plastic | 22 12 6 .5 | 1 .4 .1 | fridge F fridge | - | - | - 547
cauliflower; cauli | fresh/salad and vegetables | piece 1 | other plastic | 17 17 14 .8 | 1 .3 0 | fridge F fridge | - | - | - 280
cabbage; red cabbage; savoy cabbage; kale; spring greens | fresh/salad and vegetables | piece 1 | other plastic | 18 18 16 .9 | 2 .4 0 | fridge F fridge | - | - | - 278
brussels sprouts; sprouts | fresh/salad and vegetables | bag 500 g, 250-1000 | bag plastic | 18 12 8 .5 | 1 .3 .3 | fridge F fridge | - | - | - 277
leeks; spring onions; scallions | fresh/salad and vegetables | bag 500 g, 100-1000 | bag plastic | 12 8 38 .5 | 1 .4 0 | fridge F fridge | - | - | - 289
green beans; runner beans; mangetout; fine beans | fresh/salad and vegetables | packet 220 g, 150-400 | packet plastic | 17 11 4 .23 | 1 .4 .1 | fridge F fridge | - | - | - 273
parsnips; turnips; swede | fresh/salad and vegetables | bag 500 g, 500-1000 | bag plastic | 20 12 9 .5 | 1 .3 .3 | fridge F fridge | - | - | - 279
beetroot; cooked beetroot | fresh/salad and vegetables | packet 250 g, 250-500 | packet plastic | 14 9 5 .27 | 1 .3 .1 | fridge F fridge | - | - | - 274
radishes; cress; rocket; watercress; salad leaves | fresh/salad and vegetables | bag 120 g, 60-250 | bag plastic | 18 8 18 .12 | 2 .6 0 | fridge F fridge | - | - | - 415
fresh spinach; spinach leaves | fresh/salad and vegetables | bag 240 g, 100-500 | bag plastic | 22 10 24 .24 | 1 .5 0 | fridge F fridge | - | - | - 291
fresh herbs; cilantro; fresh parsley; fresh coriander; fresh mint; fresh basil | fresh/salad and vegetables | packet 30 g, 20-100 | packet plastic | 12 3 20 .03 | 1 .4 0 | fridge F fridge | - | - | - 288
asparagus; aubergine; eggplant; fennel | fresh/salad and vegetables | packet 250 g, 125-400 | packet plastic | 20 9 8 .26 | .3 .2 0 | fridge F fridge | - | - | - 271
corn on the cob; sweetcorn cobs | fresh/salad and vegetables | packet 400 g, 250-600 | packet plastic | 20 12 6 .42 | .3 .2 .1 | fridge F fridge | - | - | - 282
beansprouts; stir fry vegetables | fresh/salad and vegetables | bag 300 g, 200-600 | bag plastic | 20 8 20 .3 | .5 .3 0 | fridge F fridge | - | - | - 549
strawberries | fresh/fruit | packet 400 g, 200-800 | tub plastic | 18 11 8 .42 | 1 .4 .1 | fridge F fridge | - | - | - 481
raspberries; blueberries; blackberries; fresh berries | fresh/fruit | packet 150 g, 100-400 | tub plastic | 14 10 6 .17 | 1 .4 .1 | fridge F fridge | - | - | - 482
grapes | fresh/fruit | packet 500 g, 250-750 | tub plastic | 19 13 9 .53 | 3 .5 .1 | fridge F fridge | - | - | - 261
melon; watermelon | fresh/fruit | piece 1 | other plastic | 16 16 16 1.5 | .3 .2 0 | fridge F fridge | - | - | - 264
sweet potatoes; yams | fresh/vegetables | bag 1 kg, 0.5-2 | bag plastic | 22 14 9 1 | 1 .3 .3 | dry F sink | - | - | - 422
garlic; garlic bulbs | fresh/vegetables | net 4 bulbs | bag plastic | 18 6 6 .2 | 3 .2 .2 | dry F prep | - | - | - 285
fresh ginger; ginger root | fresh/vegetables | piece 150 g, 50-300 | other plastic | 12 7 4 .15 | .5 .1 .1 | dry F prep | - | - | - 286
butternut squash; pumpkin | fresh/vegetables | piece 1 | other plastic | 13 13 24 1.1 | .3 .1 0 | dry F prep | - | - | - 303
avocados; avocado pears | fresh/fruit | net 2 avocados | bag plastic | 15 8 7 .4 | 1 .4 0 | dry F table | - | - | - 250
oranges; satsumas; clementines; mandarins; easy peelers; tangerines | fresh/fruit | net 6 oranges | bag plastic | 22 14 12 .8 | 5 .7 .1 | dry F table | - | - | - 256
lemons; limes; grapefruit | fresh/fruit | net 4 lemons | bag plastic | 20 7 7 .45 | 1 .3 .1 | dry F table | - | - | - 256
pears | fresh/fruit | bag 6 pears | bag plastic | 20 14 10 .8 | 3 .7 .1 | dry F table | - | - | - 266
peaches; nectarines; plums; apricots | fresh/fruit | packet 4 | tub plastic | 17 17 8 .55 | 2 .5 .1 | dry F table | - | - | - 266
kiwi fruit; kiwis | fresh/fruit | packet 6 kiwis | tub plastic | 17 11 6 .55 | 2 .3 .1 | dry F table | - | - | - 263
mango; papaya; passion fruit | fresh/fruit | piece 1 | other plastic | 12 9 8 .4 | .5 .3 0 | dry F table | - | - | - 265
fresh pineapple; coconut fresh | fresh/fruit | piece 1 | other plastic | 13 13 28 1.4 | .2 .1 0 | dry F table | - | - | - 267
mixed vegetables; frozen mixed vegetables; frozen vegetables; frozen carrots | frozen/frozen vegetables | bag 1 kg, 0.5-2 | bag plastic | 18 7 22 1 | 2 .2 .8 | freezer F hob | - | - | bb 331
frozen broccoli; frozen cauliflower; frozen sprouts; frozen green beans | frozen/frozen vegetables | bag 900 g, 450-1500 | bag plastic | 20 9 22 .9 | 1 .2 .7 | freezer F hob | - | - | bb 331
frozen onions; frozen peppers; frozen garlic; frozen herbs | frozen/frozen vegetables | bag 500 g, 75-1000 | bag plastic | 16 6 18 .5 | 2 .2 .7 | freezer F hob | - | - | bb 331
frozen mash; roast potatoes frozen; frozen roast potatoes; potato waffles; hash browns; potato croquettes | frozen/potato | bag 700 g, 400-1500 | bag plastic | 20 8 24 .7 | 1 .2 .5 | freezer F hob | - | - | bb 313
frozen raspberries; frozen strawberries; frozen blueberries; frozen fruit | frozen/frozen fruit | bag 500 g, 300-1000 | bag plastic | 16 6 18 .5 | 1 .2 .7 | freezer F prep | - | - | bb 315
breaded fish; battered fish; fish cakes; scampi | frozen/frozen fish | box 400 g, 200-600 | box card | 20 5 17 .45 | 1 .3 .3 | freezer F hob | fish gluten ?crustaceans | - | bb 311
frozen salmon; frozen haddock; frozen cod | frozen/frozen fish | bag 500 g, 250-1000 | bag plastic | 18 5 20 .5 | 1 .3 .3 | freezer F hob | fish | - | bb 312
frozen chicken; frozen chicken breasts | frozen/frozen meat | bag 1 kg, 0.5-2 | bag plastic | 22 8 26 1 | 1 .3 .4 | freezer F hob | - | - | bb 117
chicken nuggets; breaded chicken; chicken kievs; chicken goujons | frozen/frozen meat | bag 500 g, 250-1000 | bag plastic | 20 7 22 .5 | 1 .3 .5 | freezer F hob | gluten ?milk | - | bb 134
burgers; beef burgers; frozen burgers | frozen/frozen meat | box 400 g, 200-1000 | box card | 21 7 12 .44 | .5 .2 .2 | freezer F hob | ?gluten ?sulphites | - | bb 43
frozen sausages | frozen/frozen meat | bag 700 g, 400-1000 | bag plastic | 20 7 22 .7 | .5 .2 .3 | freezer F hob | ?gluten ?sulphites | - | bb 322
frozen mince; frozen minced beef | frozen/frozen meat | bag 500 g, 400-1000 | bag plastic | 18 7 20 .5 | .5 .2 .4 | freezer F hob | - | - | bb 43
meat-free sausages; frozen veggie burgers; frozen meat-free mince | frozen/frozen meat free | bag 350 g, 200-500 | bag plastic | 18 6 20 .35 | 1 .2 .4 | freezer F hob | ?soya ?gluten ?eggs | - | bb 327
Yorkshire puddings; frozen Yorkshire puddings; frozen pastry | frozen/bread | bag 12 puddings | bag plastic | 22 10 24 .25 | .5 .2 .3 | freezer F hob | gluten eggs milk | - | bb 321
garlic bread; frozen naan; frozen pitta | frozen/bread | packet 200 g, 150-400 | packet plastic | 30 6 7 .21 | .5 .2 .1 | freezer F hob | gluten milk | - | bb 195
frozen waffles; frozen pancakes | frozen/bread | bag 8 waffles | bag plastic | 20 8 14 .35 | .5 .2 .1 | freezer F prep | gluten eggs milk | - | bb 321
frozen cake; gateau; frozen cheesecake; apple pie frozen; frozen apple pie | frozen/puddings | box 500 g, 300-1000 | box card | 22 22 8 .55 | .3 .1 .1 | freezer F table | gluten milk eggs | - | bb 198
ice lollies; choc ices; lollies | frozen/puddings | box 6 lollies | box card | 16 8 14 .45 | 1 .2 .2 | freezer F table | ?milk | - | bb 318
sorbet; dairy-free ice cream | frozen/puddings | tub 500 ml, 250-1000 | tub plastic | 11 11 10 .35 | .5 .1 .1 | freezer F table | ?nuts ?soya | - | bb 324
ice cubes; ice packs; ice cube tray | frozen/ice | tray 1 | other plastic | 12 28 4 .4 | 3 .5 .5 | freezer N sink | - | - | -
frozen leftovers; home cooked meals; batch meals | frozen/home cooked | tub 1 portion | tub plastic | 17 12 7 .5 | 2 1 .2 | freezer F hob | - | m | bb 330
frozen soup; frozen stock; frozen gravy | frozen/home cooked | tub 1 portion | tub plastic | 12 12 10 .5 | 1 .3 .2 | freezer F hob | ?celery | m | bb 193
)";
}

} // namespace model::tables
