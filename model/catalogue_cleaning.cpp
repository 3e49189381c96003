#include "model/catalogue_table.h"

namespace model::tables {

std::string_view moreHousehold() {
    return R"(
dishwasher cleaner; washing machine cleaner | cleaning/strong cleaners | bottle 250 ml, 200-500 | bottle plastic | 7 5 18 .3 | .1 .05 .3 | dry C sink | - | h | -
washing soda; soda crystals; borax | cleaning/strong cleaners | bag 1 kg, 0.5-2 | bag plastic | 14 8 20 1 | .2 .03 .7 | dry C sink | - | h | -
limescale tablets; water softener tablets | cleaning/laundry | box 15 tablets | box card | 14 9 14 .3 | 1 .05 .6 | dry C sink | - | h | -
laundry capsules; washing capsules; washing tablets; laundry tablets | cleaning/laundry | tub 30 capsules | tub plastic | 18 13 12 .8 | 2 .1 .4 | dry C sink | - | h | -
hand wash detergent; wool wash; delicates wash | cleaning/laundry | bottle 750 ml, 500-1500 | bottle plastic | 10 7 24 .8 | .3 .05 .4 | dry C sink | - | h | -
starch spray; ironing spray | cleaning/laundry | can 500 ml, 300-750 | can metal | 6.5 6.5 24 .55 | .2 .03 .3 | dry C sink | - | h | -
antibacterial spray; disinfectant spray | cleaning/sprays | bottle 500 ml, 500-1000 | bottle plastic | 10 6 26 .6 | 7 .1 .4 | dry C sink | - | h | -
bathroom cleaner; bathroom spray; shower spray | cleaning/sprays | bottle 750 ml, 500-1000 | bottle plastic | 10 6 27 .85 | 1 .1 .4 | dry C sink | - | h | -
hob cleaner; cream cleaner; scouring cream | cleaning/sprays | bottle 500 ml, 250-750 | bottle plastic | 8 5 22 .6 | 1 .05 .3 | dry C sink | - | h | -
stainless steel cleaner; metal polish; silver polish | cleaning/polish | bottle 250 ml, 125-500 | bottle plastic | 6 5 18 .3 | .2 .03 .3 | dry C sink | - | h | -
furniture polish; wood polish; polish | cleaning/polish | can 300 ml, 250-500 | can metal | 6 6 22 .3 | .5 .05 .3 | dry C entry | - | h | -
shoe polish | cleaning/polish | tin 50 ml, 40-100 | can metal | 8 8 3 .09 | .2 .02 .1 | dry C entry | - | h | -
disinfectant; pine disinfectant | cleaning/floors | bottle 1 l, 0.5-5 | bottle plastic | 9 8 28 1.1 | 1 .08 .4 | dry C sink | - | h | -
toilet cleaner; toilet gel; toilet blocks | cleaning/strong cleaners | bottle 750 ml, 500-1000 | bottle plastic | 9 6 25 .8 | 2 .1 .4 | dry C sink | - | h | -
ammonia; caustic soda; drain crystals | cleaning/strong cleaners | tub 500 g, 375-1000 | tub plastic | 9 9 14 .55 | .05 .01 .6 | dry C sink | - | h | -
carpet cleaner; upholstery cleaner | cleaning/floors | bottle 500 ml, 400-1000 | bottle plastic | 9 6 24 .6 | .1 .03 .4 | dry C sink | - | h | -
cleaning wipes; antibacterial wipes; surface wipes | cleaning/wipes | packet 60 wipes | packet plastic | 20 12 6 .35 | 7 .3 0 | dry C sink | - | h | -
air freshener; room spray | cleaning/air | can 300 ml, 200-400 | can metal | 6 6 20 .25 | 1 .05 .3 | dry C entry | - | h | -
fridge cleaner; microwave cleaner | cleaning/sprays | bottle 500 ml, 250-750 | bottle plastic | 10 6 25 .6 | .2 .03 .4 | dry C sink | - | h | -
bar of soap; soap bar; soap | cleaning/hand washing | packet 4 bars | packet paper | 13 6 9 .42 | 7 .1 0 | dry C sink | - | - | -
hand sanitiser; hand gel; alcohol gel | cleaning/hand washing | bottle 250 ml, 50-500 | bottle plastic | 6 5 16 .28 | 7 .1 .3 | dry C sink | - | h | -
firelighters; barbecue lighter fluid; barbecue fuel | cleaning/fire | box 24 cubes | box card | 13 8 8 .35 | .05 .02 .3 | dry C entry | - | h | -
glue; super glue; wood glue | cleaning/repair | bottle 100 ml, 3-250 | bottle plastic | 5 3 14 .12 | .1 .02 .1 | dry C entry | - | h | -
paint; varnish; wood stain | cleaning/repair | tin 750 ml, 125-2500 | can metal | 11 11 12 1.2 | .02 .01 .3 | dry C entry | - | h | -
lubricating oil; machine oil; spray lubricant | cleaning/repair | can 200 ml, 100-450 | can metal | 5.5 5.5 18 .22 | .05 .01 .3 | dry C entry | - | h | -
antifreeze; screen wash; de-icer | cleaning/garage | bottle 1 l, 0.5-5 | bottle plastic | 10 7 26 1.1 | .02 .01 .4 | dry C entry | - | h | -
paint thinner; turpentine; paint stripper; brush cleaner | cleaning/repair | bottle 750 ml, 250-2000 | bottle plastic | 8 8 25 .65 | .02 .01 .4 | dry C entry | - | h | -
lamp oil; lighter fluid; petrol; camping gas | cleaning/fire | bottle 500 ml, 100-1000 | bottle plastic | 7 7 22 .5 | .02 .01 .4 | dry C entry | - | h | -
nail varnish remover; nail polish remover; surgical spirit; rubbing alcohol | cleaning/strong cleaners | bottle 200 ml, 50-500 | bottle plastic | 6 4 15 .2 | .3 .03 .4 | dry C entry | - | h | -
ant powder; ant bait; mouse bait; rat poison; moth balls | cleaning/garden | tub 150 g, 50-500 | tub plastic | 7 7 14 .18 | .05 .01 .5 | dry C entry | - | h | -
plant feed; tomato feed | cleaning/garden | bottle 1 l, 0.5-2.5 | bottle plastic | 10 7 24 1.1 | .5 .05 .4 | dry C entry | - | h | -
cotton buds; cotton wool; cotton pads | household/toiletries | packet 100 pieces | packet plastic | 12 6 14 .06 | 3 .05 .2 | dry N entry | - | - | -
toothpaste | household/toiletries | tube 75 ml, 50-125 | tube plastic | 5 4 18 .12 | 14 .2 0 | dry N sink | - | - | -
shampoo; shower gel; bubble bath | household/toiletries | bottle 300 ml, 200-1000 | bottle plastic | 7 5 20 .35 | 5 .1 .3 | dry N sink | - | - | -
toilet rolls; toilet paper | household/paper | packet 9 rolls | packet plastic | 33 11 33 1 | 7 .3 0 | dry N entry | - | - | -
tissues; paper napkins; serviettes | household/paper | box 80 tissues | box card | 23 12 8 .2 | 7 .3 0 | dry N table | - | - | -
paper plates; paper cups; plastic cups; disposable cups | household/paper | packet 20 | packet plastic | 23 23 6 .25 | .2 .05 .1 | dry N table | - | - | -
freezer labels; sticky labels; labels | household/odds | packet 100 labels | packet paper | 12 1 18 .05 | .5 .03 .1 | dry N prep | - | - | -
rubber bands; string; pegs; bag clips; clips | household/odds | bag 20 | bag plastic | 12 3 14 .1 | 3 .03 .4 | dry N prep | - | - | -
rubber gloves; washing-up gloves; disposable gloves | household/cloths | packet 1 pair | packet plastic | 13 2 24 .1 | 5 .1 0 | dry N sink | - | - | -
dusters; microfibre cloths; floor cloths; dishcloths | household/cloths | packet 5 | packet cloth | 18 6 16 .2 | 3 .1 0 | dry N sink | - | - | -
scouring pads; wire wool; steel wool | household/cloths | packet 10 | packet plastic | 12 7 14 .1 | 3 .1 .1 | dry N sink | - | s | -
washing-up brush; dish brush; bottle brush | household/brushes | one brush | tool plastic | 7 25 7 .1 | 14 .05 .1 | dry N sink | - | - | -
washing-up bowl | household/bowls and buckets | one bowl | bowl plastic | 36 30 14 .6 | 14 0 .1 | dry N sink | - | - | -
dustpan and brush; hand brush; dustpan | household/brushes | one set | other plastic | 22 33 12 .4 | 3 0 .2 | dry N entry | - | - | -
bucket; mop bucket | household/bowls and buckets | one bucket | other plastic | 30 30 28 .8 | 1 0 .1 | dry N entry | - | - | -
shopping bags; carrier bags; bags for life | household/bags and wraps | bundle 10 | bag plastic | 30 15 25 .5 | 3 .05 .1 | dry N entry | - | - | -
food waste bags; compost bags; caddy liners | household/bags and wraps | roll 25 bags | packet plastic | 16 6 6 .15 | 3 .1 0 | dry N sink | - | - | -
paper cases; cake cases; baking cases | household/bags and wraps | tub 100 cases | tub plastic | 8 8 8 .06 | .2 .03 .1 | dry N prep | - | - | -
straws; cocktail sticks; skewers; toothpicks | household/odds | box 100 | box card | 21 5 4 .1 | .5 .03 .4 | dry N prep | - | s | -
light bulbs; fuses; plugs | household/odds | box 2 | box card | 12 7 13 .15 | .1 .02 .3 | dry N entry | - | g | -
torch; lantern | household/odds | one torch | tool plastic | 5 17 5 .25 | .5 0 .2 | dry N entry | - | - | -
candles; tea lights; nightlights | cleaning/fire | box 10 | box card | 14 8 8 .4 | .2 .02 .3 | dry N entry | - | h | -
gas lighter; hob lighter; lighter gas | cleaning/fire | one lighter | tool plastic | 4 25 4 .1 | 3 .02 .2 | dry N hob | - | h | -
first aid kit; plasters; bandages | medicines/first aid | box 1 kit | box plastic | 22 16 8 .5 | .2 .02 .4 | dry N entry | - | p | -
burn gel; antiseptic cream; antiseptic | medicines/first aid | tube 30 g, 15-100 | tube plastic | 4 3 13 .05 | .1 .02 .1 | dry N entry | - | p | -
painkillers; paracetamol; ibuprofen; aspirin; codeine | medicines/tablets | box 16 tablets | box card | 11 3 6 .03 | 3 .1 .5 | dry N table | - | hp | -
vitamins; vitamin tablets; supplements; cod liver oil capsules | medicines/tablets | tub 90 tablets | tub plastic | 6 6 11 .12 | 7 .08 .7 | dry N table | ?fish | hp | -
antihistamine; allergy tablets; hay fever tablets | medicines/tablets | box 30 tablets | box card | 11 3 6 .03 | 3 .1 .5 | dry N table | - | hp | -
blood thinner; warfarin; anticoagulant; blood thinning tablets | medicines/tablets | box 28 tablets | box card | 11 3 6 .03 | 7 .25 .5 | dry N table | - | hp | -
antibiotics; antibiotic tablets; steroid tablets; antibiotic | medicines/tablets | box 21 tablets | box card | 11 3 6 .03 | 7 .1 .5 | dry N table | - | hp | -
antacid; indigestion tablets; indigestion liquid; laxative | medicines/tablets | bottle 300 ml, 150-600 | bottle plastic | 7 5 17 .38 | 2 .05 .3 | dry N table | - | hp | -
cough sweets; throat sweets; throat lozenges; lozenges | medicines/tablets | box 24 sweets | box card | 11 3 7 .07 | 3 .1 .5 | dry N table | - | hp | -
nasal spray; nose spray; ear drops | medicines/liquids | bottle 15 ml, 5-50 | bottle plastic | 4 3 9 .04 | 3 .1 .2 | dry N table | - | hp | -
cough medicine; cough syrup; cough mixture; linctus | medicines/liquids | bottle 200 ml, 100-300 | bottle glass | 6 6 14 .4 | .3 .03 .3 | dry N table | - | hp | -
pill box; tablet organiser; dosette box | medicines/tablets | one box | box plastic | 22 12 4 .2 | 21 0 .7 | dry N table | - | hp | -
adrenaline pen; adrenaline injector; adrenaline auto-injector; allergy pen | medicines/emergency medicines | box 2 pens | box card | 17 6 4 .12 | .02 .02 .2 | dry N table | - | hp | -
inhaler; spacer; nebuliser solution | medicines/emergency medicines | one inhaler | other plastic | 6 4 10 .06 | 14 .1 .2 | dry N table | - | hp | -
blood glucose meter; test strips; lancets | medicines/testing | box 1 kit | box plastic | 16 10 5 .25 | 14 .1 .3 | dry N table | - | hps | -
baby formula; infant milk; formula milk | baby/milk | tin 800 g, 200-1200 | can metal | 13 13 17 .95 | 42 1 .5 | dry F prep | milk ?soya ?fish | m | ub -
baby food; baby food jars; baby food pouches | baby/food | jar 125 g, 70-200 | jar glass | 6 6 9 .25 | 14 5 .1 | dry F prep | ?milk ?gluten | - | ub -
)";
}

} // namespace model::tables
