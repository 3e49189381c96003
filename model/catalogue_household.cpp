#include "model/catalogue_table.h"

namespace model::tables {

std::string_view household() {
    return R"(
washing-up liquid; washing up liquid; dish soap | cleaning/dish washing | bottle 500 ml, 200-1500 | bottle plastic | 8 5 22 .55 | 14 .1 .3 | dry C sink | - | - | -
dishwasher tablets; dishwasher tablet | cleaning/dish washing | tub 40 tablets | tub plastic | 15 9 18 .8 | 4 .1 .7 | dry C sink | - | h | -
dishwasher salt | cleaning/dish washing | box 2 kg, 0.75-5 | box card | 14 9 22 2.05 | .3 .05 .7 | dry C sink | - | h | -
rinse aid | cleaning/dish washing | bottle 500 ml, 200-1500 | bottle plastic | 8 5 20 .55 | .2 .05 .4 | dry C sink | - | h | -
bleach; toilet bleach | cleaning/strong cleaners | bottle 750 ml, 300-2000 | bottle plastic | 8 8 27 .85 | 1 .1 .4 | dry C sink | - | h | -
oven cleaner | cleaning/strong cleaners | can 300 ml, 150-500 | can metal | 6.5 6.5 23 .4 | .1 .02 .3 | dry C sink | - | h | -
drain cleaner; drain unblocker | cleaning/strong cleaners | bottle 500 ml, 200-1500 | bottle plastic | 8 8 24 .65 | .05 .02 .4 | dry C sink | - | h | -
descaler; limescale remover | cleaning/strong cleaners | bottle 500 ml, 200-1500 | bottle plastic | 8 6 23 .55 | .2 .03 .4 | dry C sink | - | h | -
kitchen spray; surface spray; kitchen cleaner; multi-purpose cleaner; all-purpose cleaner | cleaning/sprays | bottle 750 ml, 300-2000 | bottle plastic | 10 6 27 .85 | 5 .1 .4 | dry C sink | - | h | -
glass cleaner; window cleaner | cleaning/sprays | bottle 500 ml, 200-1500 | bottle plastic | 10 6 26 .6 | .5 .05 .4 | dry C sink | - | h | -
floor cleaner | cleaning/floors | bottle 1 l, 0.4-3 | bottle plastic | 9 8 28 1.1 | .5 .05 .4 | dry C sink | - | h | -
washing powder; laundry powder | cleaning/laundry | box 2.6 kg, 1-6 | box card | 20 10 25 2.7 | 2 .1 .5 | dry C sink | - | h | -
laundry liquid; washing liquid; laundry detergent | cleaning/laundry | bottle 1 l, 0.4-3 | bottle plastic | 12 8 26 1.1 | 2 .1 .4 | dry C sink | - | h | -
fabric softener; fabric conditioner | cleaning/laundry | bottle 1 l, 0.4-3 | bottle plastic | 10 7 26 1.1 | 2 .1 .4 | dry C sink | - | h | -
stain remover | cleaning/laundry | tub 500 g, 200-1500 | tub plastic | 11 11 12 .55 | .2 .03 .6 | dry C sink | - | h | -
hand soap; liquid soap | cleaning/hand washing | bottle 250 ml, 100-750 | bottle plastic | 7 5 17 .3 | 21 .2 .3 | dry C sink | - | - | -
white spirit; methylated spirit; paraffin | cleaning/strong cleaners | bottle 750 ml, 300-2000 | bottle plastic | 8 8 25 .65 | .05 .01 .4 | dry C entry | - | h | -
slug pellets; weedkiller | cleaning/garden | box 350 g, 150-1000 | box card | 10 6 18 .4 | .1 .02 .7 | dry C entry | - | h | -
fly spray; insect spray | cleaning/garden | can 300 ml, 150-500 | can metal | 6.5 6.5 23 .3 | .1 .02 .3 | dry C entry | - | h | -
matches | cleaning/fire | box 240 matches | box card | 12 7 3 .06 | .2 .02 .8 | dry N hob | - | h | -
bin bags; refuse sack; bin liner; trash bags; garbage bags; black bags | household/bags and wraps | roll 20 bags | packet plastic | 20 7 7 .4 | 2 .1 0 | dry N sink | - | - | -
cling film; plastic wrap | household/bags and wraps | box 30 m | box card | 31 5 5 .25 | 2 .05 .1 | dry N prep | - | s | -
kitchen foil; tin foil; foil roll; aluminum foil; aluminium foil | household/bags and wraps | box 10 m | box card | 31 5 5 .25 | 1 .05 .1 | dry N prep | - | s | -
baking paper; greaseproof paper; wax paper; parchment paper | household/bags and wraps | box 10 m | box card | 31 5 5 .25 | .5 .05 .1 | dry N prep | - | s | -
freezer bags; sandwich bag; zip bags; lunch bags; food bag | household/bags and wraps | box 40 bags | box card | 20 5 8 .2 | 2 .1 .1 | dry N prep | - | - | -
kitchen roll; kitchen paper; kitchen towel roll; paper towel | household/paper | roll 1 | packet paper | 12 12 23 .25 | 14 .5 0 | dry N sink | - | - | -
sponges; scourers; dish cloth | household/cloths | packet 4 | packet plastic | 12 8 8 .06 | 1 .2 0 | dry N sink | - | - | -
tea towels; cloths; tea towel | household/cloths | pile of 6 | other cloth | 28 20 10 .5 | 7 .5 0 | dry N sink | - | - | -
batteries | household/odds | packet 4 | packet plastic | 9 3 12 .12 | .1 .02 .3 | dry N entry | - | h | -
tablets; medicine; pills | medicines/tablets | box 28 tablets | box card | 12 4 6 .05 | 14 .25 .6 | dry N table | - | hp | -
glucose tablets; dextrose | medicines/low sugar treatment | tube 10 tablets | tube plastic | 3 3 11 .05 | .5 .1 .7 | dry N table | - | p | -
thickener powder; thickener | medicines/thickener | tub 250 g, 100-750 | tub metal | 10 10 13 .32 | 14 .25 .5 | dry N hob | - | hp | -
small saucepan; saucepan | pans/saucepans | one pan | pan metal | 18 32 12 .9 | 5 0 .3 | dry N hob | - | t | -
large saucepan; big saucepan | pans/saucepans | one pan | pan metal | 24 40 16 1.6 | 3 0 .3 | dry N hob | - | t | -
frying pan; skillet | pans/frying pans | one pan | pan metal | 28 45 7 1.4 | 4 0 .2 | dry N hob | - | t | -
casserole; casserole dish | pans/oven dishes | one dish | pan ceramic | 28 24 14 2.8 | .5 0 .3 | dry N hob | - | gt | -
roasting tin | pans/oven dishes | one tin | pan metal | 36 26 7 1.1 | .5 0 .3 | dry N hob | - | t | -
baking tray; baking sheet; cookie sheet; sheet pan | pans/oven dishes | one tray | pan metal | 35 25 3 .7 | 2 0 .3 | dry N hob | - | t | -
cake tin | pans/oven dishes | one tin | pan metal | 22 22 8 .5 | .2 0 .3 | dry N prep | - | t | -
oven gloves; oven mitts | pans/heat protection | one pair | other cloth | 18 30 6 .25 | 7 0 0 | dry N hob | - | - | -
colander | pans/draining | one colander | bowl metal | 25 25 13 .5 | 3 0 .3 | dry N sink | - | - | -
kettle | appliances/small appliances | one kettle | other metal | 22 17 24 1.2 | 28 0 .2 | dry N hob | - | t | -
toaster | appliances/small appliances | one toaster | other metal | 28 18 20 1.5 | 7 0 .2 | dry N prep | - | t | -
blender | appliances/small appliances | one machine | other plastic | 18 18 38 2.4 | .5 0 .3 | dry N prep | - | s | -
kitchen scales; scales; scale | appliances/measuring | one scale | other plastic | 18 20 5 .6 | 1 0 .1 | dry N prep | - | - | -
measuring jug; jug | appliances/measuring | one jug | mug plastic | 13 17 15 .2 | 3 0 .1 | dry N prep | - | - | -
measuring spoons | appliances/measuring | one set | tool plastic | 8 14 5 .08 | 2 0 .7 | dry N prep | - | - | -
mixing bowl; large bowl | tableware/mixing bowls | one bowl | bowl ceramic | 26 26 13 1.3 | 1 0 .1 | dry N prep | - | g | -
dinner plates; plate; large plates | tableware/plates | pile of 6 | plate ceramic | 27 27 9 3.6 | 7 0 .3 | dry N table | - | g | -
side plates; small plates | tableware/plates | pile of 4 | plate ceramic | 19 19 7 1.4 | 7 0 .3 | dry N table | - | g | -
cereal bowls; bowl; soup bowl | tableware/bowls | pile of 4 | bowl ceramic | 17 17 12 1.6 | 7 0 .3 | dry N table | - | g | -
mugs; cups | tableware/mugs | row of 4 | mug ceramic | 24 18 10 1.4 | 21 0 .3 | dry N hob | - | g | -
glasses; tumblers; beer glass; drinking glasses | tableware/glasses | row of 4 | mug glass | 22 16 12 1 | 14 0 .4 | dry N sink | - | g | -
cutlery; knives and forks | tools/cutlery | one tray | tool metal | 26 34 6 1.6 | 21 0 .9 | dry N table | - | - | -
sharp knives; kitchen knives; chopping knife; bread knife | tools/knives | one block | tool metal | 12 18 24 1.4 | 7 0 .5 | dry N prep | - | hs | -
scissors; kitchen scissors | tools/knives | one pair | tool metal | 9 21 3 .12 | 4 0 .3 | dry N prep | - | s | -
peeler; vegetable peeler; potato peeler | tools/cutters | one tool | tool metal | 8 17 4 .1 | 3 0 .3 | dry N prep | - | s | -
tin opener; can opener | tools/openers | one tool | tool metal | 7 20 5 .25 | 3 0 .4 | dry N prep | - | s | -
wooden spoons; wooden spoon; spatula | tools/stirring tools | set of 4 | tool wood | 12 32 8 .25 | 7 0 .4 | dry N hob | - | - | -
ladle | tools/stirring tools | set of 4 | tool metal | 14 32 8 .4 | 3 0 .6 | dry N hob | - | - | -
chopping board; cutting board | tools/boards | one board | other plastic | 4 25 36 .9 | 7 0 .1 | dry N prep | - | - | -
storage boxes; food boxes; plastic boxes | tableware/storage boxes | pile of 5 | tub plastic | 24 18 18 .6 | 3 0 .4 | dry N prep | - | - | -
liquid level indicator; level sensor | tools/talking aids | one tool | other plastic | 4 3 9 .04 | 14 0 .1 | dry N hob | - | - | -
talking timer; kitchen timer; timer | tools/talking aids | one timer | other plastic | 8 4 8 .1 | 7 0 .1 | dry N hob | - | - | -
flask; vacuum flask | tableware/flasks | one flask | bottle metal | 9 9 30 .7 | 1 0 .2 | dry N hob | - | t | -
)";
}

} // namespace model::tables
