#include "model/catalogue_table.h"

namespace model::tables {

std::string_view coldFood() {
    return R"(
milk; cow milk; semi-skimmed milk; whole milk | dairy/milk | carton 1 l, 0.4-2 | bottle plastic | 9 9 22 1.1 | 14 2 .5 | fridge F fridge | milk | m | ub 27
oat milk | dairy/plant milk | carton 1 l, 0.4-2 | box card | 8 7 20 1.1 | 7 1 .5 | fridge F fridge | gluten | m | bb 408
soya milk; soy milk | dairy/plant milk | carton 1 l, 0.4-2 | box card | 8 7 20 1.1 | 7 1 .5 | fridge F fridge | soya | m | bb 421
almond milk; cashew milk; hazelnut milk; nut milk | dairy/plant milk | carton 1 l, 0.4-2 | box card | 8 7 20 1.1 | 7 1 .5 | fridge F fridge | nuts | m | bb 427
rice milk | dairy/plant milk | carton 1 l, 0.4-2 | box card | 8 7 20 1.1 | 7 1 .5 | fridge F fridge | - | m | bb 428
butter | dairy/butter and spread | packet 250 g, 100-750 | packet foil | 11 7 4 .25 | 7 .5 0 | fridge F fridge | milk | - | bb 1
margarine; spread; vegetable spread | dairy/butter and spread | tub 500 g, 200-1500 | tub plastic | 12 9 8 .53 | 7 .5 0 | fridge F fridge | ?milk | - | bb 26
cheddar; hard cheese; cheese | dairy/cheese | packet 350 g, 150-1000 | packet plastic | 13 8 5 .36 | 5 .5 0 | fridge F fridge | milk | - | bb 3
soft cheese; cream cheese | dairy/cheese | tub 180 g, 75-500 | tub plastic | 11 9 5 .2 | 2 .4 0 | fridge F fridge | milk | - | ub 10
cottage cheese | dairy/cheese | tub 300 g, 100-1000 | tub plastic | 10 10 8 .33 | 1 .3 .1 | fridge F fridge | milk | - | ub 9
plain yoghurt; yoghurt; yogurt; natural yoghurt | dairy/yoghurt | tub 500 g, 200-1500 | tub plastic | 10 10 11 .53 | 5 .7 .2 | fridge F fridge | milk | - | ub 33
fruit yoghurt; fruit yogurt | dairy/yoghurt | tub 125 g, 50-400 | tub plastic | 7 7 8 .14 | 4 .7 .2 | fridge F fridge | milk | - | ub 33
cream; half and half; double cream; single cream | dairy/cream | tub 300 ml, 100-1000 | tub plastic | 9 9 9 .33 | 1 .4 .3 | fridge F fridge | milk | - | ub 14
eggs; hen egg | dairy/eggs | box 6 eggs | box card | 15 10 7 .4 | 5 .7 .1 | fridge F fridge | eggs | - | bb 21
ham; sliced ham | meat and fish/cooked meat | packet 120 g, 50-400 | packet plastic | 18 1.5 13 .13 | 2 .7 0 | fridge F fridge | - | - | ub 515
bacon | meat and fish/raw meat | packet 250 g, 100-750 | packet plastic | 18 2 14 .26 | 1 .4 0 | fridge F fridge | - | - | ub 79
chicken; chicken breasts; raw chicken | meat and fish/raw meat | packet 500 g, 200-1500 | tub plastic | 20 15 6 .53 | 1 1 0 | fridge F fridge | - | - | ub 117
minced beef; ground beef; mince; raw mince; mince beef; beef mince | meat and fish/raw meat | packet 500 g, 200-1500 | tub plastic | 20 15 5 .53 | 1 1 0 | fridge F fridge | - | - | ub 43
smoked salmon | meat and fish/cooked fish | packet 100 g, 40-300 | packet plastic | 20 1 14 .11 | .5 .3 0 | fridge F fridge | fish | - | ub 167
hummus; houmous | ready food/dips | tub 200 g, 75-500 | tub plastic | 10 10 5 .22 | 2 .5 0 | fridge F fridge | sesame | - | ub 181
tofu | ready food/tofu | packet 280 g, 100-750 | tub plastic | 12 9 5 .33 | 1 .4 .1 | fridge F fridge | soya | - | ub 168
pesto | ready food/sauces | jar 190 g, 100-500 | jar glass | 6.5 6.5 9 .33 | 1 .1 .1 | fridge F fridge | milk nuts | m | bb 354
mayonnaise; salad cream | ready food/sauces | jar 400 g, 200-1000 | jar glass | 8 8 13 .65 | 2 .1 .1 | fridge F fridge | eggs ?mustard | m | bb 350
orange juice; fruit juice; apple juice; juice | cold drinks/juice | carton 1 l, 0.4-2 | box card | 8 7 20 1.1 | 7 1 .5 | fridge F fridge | - | - | ub 455
lemon juice | cold drinks/juice | bottle 250 ml, 100-750 | bottle plastic | 6 6 15 .28 | 1 .1 .4 | fridge F fridge | ?sulphites | m | bb 448
carrots | fresh/salad and vegetables | bag 1 kg, 0.4-3 | bag plastic | 20 14 10 1 | 3 .7 .3 | fridge F fridge | - | - | - 279
lettuce; salad | fresh/salad and vegetables | bag 1 head | bag plastic | 18 16 14 .4 | 3 .7 0 | fridge F fridge | - | - | - 290
tomatoes; fresh tomatoes; cherry tomatoes | fresh/salad and vegetables | packet 400 g, 150-1000 | tub plastic | 17 11 8 .42 | 4 .7 .1 | fridge F fridge | - | - | - 600
broccoli | fresh/salad and vegetables | packet 350 g, 150-1000 | packet plastic | 15 13 14 .36 | 2 .5 0 | fridge F fridge | - | - | - 276
cooked leftovers; leftover | ready food/leftovers | tub 1 portion | tub plastic | 17 12 8 .5 | 2 2 .2 | fridge F fridge | - | m | -
frozen peas; garden peas; peas | frozen/frozen vegetables | bag 900 g, 400-3000 | bag plastic | 18 7 20 .9 | 3 .2 .8 | freezer F hob | - | - | bb 331
frozen sweetcorn | frozen/frozen vegetables | bag 900 g, 400-3000 | bag plastic | 18 7 20 .9 | 1 .1 .8 | freezer F hob | - | - | bb 331
frozen spinach; spinach | frozen/frozen vegetables | bag 900 g, 400-3000 | bag plastic | 18 7 20 .9 | 1 .1 .7 | freezer F hob | - | - | bb 331
frozen berries; berry | frozen/frozen fruit | bag 500 g, 200-1500 | bag plastic | 16 6 18 .5 | 1 .2 .7 | freezer F prep | - | - | bb 315
chips; oven chips; frozen chips | frozen/potato | bag 1 kg, 0.4-3 | bag plastic | 22 8 25 1 | 1 .2 .5 | freezer F hob | - | - | bb 313
fish fingers | frozen/frozen fish | box 10 fingers | box card | 16 4 19 .3 | 1 .3 .4 | freezer F hob | fish gluten | - | bb 311
frozen fish; cod fillets; fish fillet | frozen/frozen fish | bag 500 g, 200-1500 | bag plastic | 18 5 20 .5 | 1 .3 .3 | freezer F hob | fish | - | bb 312
frozen prawns | frozen/frozen fish | bag 250 g, 100-750 | bag plastic | 15 4 18 .26 | .5 .2 .5 | freezer F hob | crustaceans | m | bb 325
ready meal; frozen ready meal | frozen/ready meals | box 400 g, 150-1000 | box card | 18 4 14 .44 | 2 1 .2 | freezer F hob | ?milk ?gluten | - | bb 330
pizza; frozen pizza | frozen/ready meals | box 400 g, 150-1000 | box card | 27 3 27 .45 | 1 .5 .1 | freezer F hob | gluten milk | - | bb 571
ice cream | frozen/puddings | tub 1 l, 0.4-3 | tub plastic | 17 11 11 .6 | 2 .3 .1 | freezer F table | milk ?nuts | - | bb 317
frozen bread; bread rolls frozen | frozen/bread | bag 6 rolls | bag plastic | 22 12 12 .45 | 2 .3 .1 | freezer F prep | gluten | - | bb 195
)";
}

} // namespace model::tables
