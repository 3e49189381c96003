#include "model/catalogue_table.h"

namespace model::tables {

std::string_view kitchenware() {
    return R"(
milk pan; sauce pan small | pans/saucepans | one pan | pan metal | 15 28 10 .6 | 3 0 .3 | dry N hob | - | t | -
medium saucepan; pan | pans/saucepans | one pan | pan metal | 20 36 14 1.2 | 5 0 .3 | dry N hob | - | t | -
stock pot; stockpot; casserole pan; Dutch oven | pans/saucepans | one pot | pan metal | 30 36 22 3.2 | .3 0 .3 | dry N hob | - | t | -
steamer; steamer basket | pans/saucepans | one steamer | pan metal | 24 30 18 1.3 | 1 0 .4 | dry N hob | - | t | -
pressure cooker | pans/saucepans | one cooker | pan metal | 26 44 22 3.5 | .5 0 .4 | dry N hob | - | t | -
pan lids; saucepan lids; lid | pans/lids | pile of 4 | pan metal | 24 24 12 1.4 | 5 0 .7 | dry N hob | - | t | -
wok; stir fry pan | pans/frying pans | one wok | pan metal | 32 50 11 1.6 | 1 0 .2 | dry N hob | - | t | -
griddle pan; pancake pan; crepe pan; omelette pan | pans/frying pans | one pan | pan metal | 26 44 5 1.3 | 1 0 .2 | dry N hob | - | t | -
egg poacher; poaching pan | pans/frying pans | one pan | pan metal | 20 36 9 .9 | .5 0 .4 | dry N hob | - | t | -
lasagne dish; oven dish; baking dish; gratin dish | pans/oven dishes | one dish | pan ceramic | 32 22 7 1.9 | 1 0 .2 | dry N hob | - | gt | -
pie dish; flan dish; quiche dish | pans/oven dishes | one dish | pan ceramic | 26 26 5 1.1 | .3 0 .2 | dry N hob | - | gt | -
pyrex dish; glass dish; glass casserole | pans/oven dishes | one dish | pan glass | 25 22 11 1.8 | .5 0 .2 | dry N hob | - | gt | -
ramekins; souffle dishes | pans/oven dishes | pile of 4 | bowl ceramic | 18 9 10 .8 | .3 0 .4 | dry N prep | - | gt | -
muffin tin; bun tin; Yorkshire pudding tin | pans/baking tins | one tin | pan metal | 35 27 4 .6 | .3 0 .3 | dry N prep | - | t | -
loaf tin; bread tin | pans/baking tins | one tin | pan metal | 24 13 8 .4 | .5 0 .2 | dry N prep | - | t | -
sandwich tins; Victoria sandwich tin; springform tin | pans/baking tins | pile of 2 | pan metal | 23 23 8 .8 | .2 0 .4 | dry N prep | - | t | -
cooling rack; wire rack | pans/baking tins | one rack | tool metal | 40 26 2 .4 | .5 0 .5 | dry N prep | - | - | -
grill pan; grill tray | pans/oven dishes | one pan | pan metal | 38 33 6 1.4 | 2 0 .5 | dry N hob | - | t | -
oven shelf; oven rack | pans/oven dishes | one shelf | tool metal | 45 36 2 1 | 3 0 .5 | dry N hob | - | t | -
pudding basin; steamed pudding basin | tableware/mixing bowls | one basin | bowl ceramic | 16 16 10 .6 | .2 0 .1 | dry N prep | - | g | -
plastic mixing bowl; plastic bowls; stainless steel bowl | tableware/mixing bowls | pile of 2 | bowl plastic | 26 26 14 .5 | 1 0 .1 | dry N prep | - | - | -
sieve; strainer; flour sieve | pans/draining | one sieve | tool metal | 20 36 9 .25 | 2 0 .3 | dry N sink | - | - | -
salad spinner; salad bowl | tableware/mixing bowls | one bowl | bowl plastic | 27 27 18 1 | 1 0 .2 | dry N prep | - | - | -
trivet; pan stand; heat mat; hot pad | pans/heat protection | one trivet | other metal | 20 20 2 .3 | 14 0 .2 | dry N hob | - | - | -
apron; kitchen apron | pans/heat protection | one apron | other cloth | 28 22 3 .2 | 7 0 0 | dry N prep | - | - | -
tea cosy; egg cosy; pot holder | pans/heat protection | one | other cloth | 25 20 5 .1 | 5 0 0 | dry N hob | - | - | -
hand blender; stick blender; hand mixer; electric whisk | appliances/small appliances | one machine | other plastic | 9 20 38 1.2 | .5 0 .3 | dry N prep | - | s | -
food processor; stand mixer; food mixer | appliances/small appliances | one machine | other plastic | 25 22 40 4.5 | .5 0 .3 | dry N prep | - | s | -
slow cooker; rice cooker; multi cooker | appliances/small appliances | one cooker | other metal | 32 25 25 4 | 1 0 .3 | dry N hob | - | gt | -
sandwich toaster; toastie maker; contact grill; grill press | appliances/small appliances | one machine | other metal | 27 25 11 2 | .5 0 .2 | dry N prep | - | t | -
air fryer; mini oven; table oven | appliances/small appliances | one fryer | other plastic | 28 35 32 5 | 5 0 .2 | dry N prep | - | t | -
microwave; microwave oven | appliances/large appliances | one oven | other metal | 46 36 27 13 | 10 0 .1 | dry N prep | - | t | -
coffee machine; coffee maker; coffee percolator; espresso machine | appliances/small appliances | one machine | other plastic | 20 30 33 3 | 7 0 .3 | dry N hob | - | t | -
cafetiere; French press; coffee pot | appliances/small appliances | one pot | other glass | 16 11 23 .7 | 5 0 .3 | dry N hob | - | gt | -
soup maker; smoothie maker | appliances/small appliances | one machine | other metal | 20 20 36 2.8 | .5 0 .3 | dry N prep | - | st | -
bread maker; bread machine | appliances/small appliances | one machine | other plastic | 28 38 33 6 | .5 0 .2 | dry N prep | - | t | -
ice cream maker; yoghurt maker; juicer | appliances/small appliances | one machine | other plastic | 22 22 30 3 | .2 0 .3 | dry N prep | - | - | -
electric tin opener; electric can opener; jar opener electric | appliances/small appliances | one opener | other plastic | 12 11 22 .8 | 3 0 .2 | dry N prep | - | s | -
iron; steam iron | appliances/small appliances | one iron | other plastic | 12 29 15 1.3 | 1 0 .2 | dry N entry | - | t | -
one cup kettle; hot water dispenser; kettle tipper | appliances/small appliances | one machine | other plastic | 18 25 32 2 | 28 0 .2 | dry N hob | - | t | -
blender jug; blender lid; smoothie cup | appliances/appliance parts | one part | other plastic | 14 18 24 .8 | .5 0 .2 | dry N prep | - | - | -
food processor blades; mixer blades; grating discs; blender blade | appliances/appliance parts | one set | tool metal | 18 18 8 .4 | .5 0 .7 | dry N prep | - | hs | -
mixer beaters; whisk attachments; dough hooks | appliances/appliance parts | one set | tool metal | 6 18 6 .2 | .5 0 .7 | dry N prep | - | - | -
microwave plate; microwave turntable; microwave cover; microwave lid | appliances/appliance parts | one plate | plate glass | 28 28 6 1 | 10 0 .3 | dry N prep | - | gt | -
slow cooker pot; slow cooker lid; rice cooker pot | appliances/appliance parts | one pot | bowl ceramic | 28 22 15 2.2 | 1 0 .3 | dry N hob | - | gt | -
water filter jug; filter jug; water jug | tableware/jugs | one jug | mug plastic | 11 26 27 .8 | 14 0 .3 | dry N sink | - | - | -
water filters; filter cartridges; fridge filter | appliances/appliance parts | box 3 filters | box card | 18 7 12 .4 | .3 .03 .3 | dry N sink | - | - | -
vacuum cleaner bags; hoover bags; vacuum bags | appliances/appliance parts | packet 5 bags | packet card | 20 5 26 .3 | .3 .03 0 | dry N entry | - | - | -
extension lead; charger; cables; adaptor; timer plug | appliances/appliance parts | one lead | other plastic | 18 12 8 .5 | .5 0 .2 | dry N entry | - | - | -
measuring cups; cup measures | appliances/measuring | one set | tool plastic | 10 18 8 .15 | 1 0 .6 | dry N prep | - | - | -
talking scales; talking kitchen scales | tools/talking aids | one scale | other plastic | 20 22 6 .9 | 2 0 .1 | dry N prep | - | - | -
talking microwave thermometer; food thermometer; meat thermometer; talking thermometer | tools/talking aids | one tool | tool plastic | 4 18 3 .08 | 1 0 .1 | dry N hob | - | s | -
label reader; sound labels; tactile markers; bump dots; tactile dots | tools/talking aids | box 1 set | box plastic | 14 10 4 .15 | 3 .03 .3 | dry N prep | - | - | -
magnifier; hand magnifier; reading glass | tools/talking aids | one magnifier | tool glass | 9 20 3 .2 | 21 0 .1 | dry N prep | - | g | -
serving bowls; vegetable dishes; serving dish; tureen | tableware/serving | pile of 2 | bowl ceramic | 26 26 12 1.8 | 1 0 .3 | dry N table | - | g | -
serving plate; platter; meat plate; cake stand | tableware/serving | one plate | plate ceramic | 36 27 4 1.2 | .3 0 .2 | dry N table | - | g | -
tray; lap tray; serving tray; non-slip tray | tableware/serving | one tray | other plastic | 42 31 4 .7 | 7 0 .1 | dry N table | - | - | -
pasta bowls; pudding bowls; dessert bowls; deep plates | tableware/bowls | pile of 4 | bowl ceramic | 21 21 11 2 | 4 0 .3 | dry N table | - | g | -
plastic plates; melamine plates; plate guard; lipped plate | tableware/plates | pile of 4 | plate plastic | 25 25 6 .7 | 7 0 .3 | dry N table | - | - | -
tea cups; coffee cups; cups and saucers; saucers | tableware/mugs | pile of 4 | mug ceramic | 28 16 14 1.4 | 5 0 .4 | dry N hob | - | g | -
two-handled mug; beaker; plastic beaker; travel mug; insulated mug | tableware/mugs | row of 2 | mug plastic | 24 12 12 .4 | 14 0 .2 | dry N hob | - | - | -
wine glasses; wine glass; sherry glasses; champagne glasses | tableware/glasses | row of 4 | mug glass | 18 18 21 .8 | 1 0 .4 | dry N table | - | g | -
plastic glasses; plastic tumblers | tableware/glasses | row of 4 | mug plastic | 18 18 12 .3 | 7 0 .3 | dry N sink | - | - | -
egg cups; egg cup | tableware/bowls | row of 4 | mug ceramic | 20 5 6 .25 | 2 0 .4 | dry N table | - | g | -
teapot | tableware/jugs | one pot | other ceramic | 23 14 15 .9 | 14 0 .3 | dry N hob | - | gt | -
milk jug; gravy boat; sauce boat; cream jug | tableware/jugs | one jug | mug ceramic | 12 9 10 .35 | 7 0 .2 | dry N table | - | g | -
glass jug; pitcher; carafe | tableware/jugs | one jug | mug glass | 17 12 22 .9 | 2 0 .3 | dry N table | - | g | -
butter dish; cheese dish | tableware/serving | one dish | bowl ceramic | 18 12 8 .5 | 7 0 .3 | dry N table | - | g | -
sugar bowl; sugar basin; sugar pot | tableware/serving | one bowl | bowl ceramic | 11 11 9 .3 | 14 0 .3 | dry N table | - | g | -
salt and pepper mills; pepper mill; salt cellar; salt shaker; pepper pot | tableware/serving | one pair | other wood | 12 6 17 .5 | 14 0 .6 | dry N table | - | - | -
toast rack; fruit bowl; bread basket; napkin rings | tableware/serving | one | bowl metal | 24 20 10 .6 | 5 0 .3 | dry N table | - | - | -
place mats; table mats; coasters; non-slip mat; tablecloth | tableware/serving | pile of 6 | other cloth | 30 22 3 .6 | 14 0 0 | dry N table | - | - | -
bread bin; bread box | tableware/storage boxes | one bin | box metal | 34 22 19 1.6 | 14 0 .2 | dry N prep | - | - | -
biscuit tin; biscuit barrel; cake box; biscuit jar | tableware/storage boxes | one tin | box metal | 22 22 12 .6 | 7 0 .3 | dry N table | - | - | -
storage jars; glass jars; kilner jars; empty jars; jam jars | tableware/storage boxes | row of 4 | jar glass | 22 22 20 2 | 3 0 .5 | dry N prep | - | g | -
tea caddy; coffee canister; sugar canister; canisters | tableware/storage boxes | row of 3 | canister metal | 33 11 18 1.2 | 14 0 .5 | dry N hob | - | - | -
lunch box; sandwich box; water bottle; drinks bottle; sports bottle | tableware/flasks | one box | tub plastic | 20 14 8 .25 | 3 0 .2 | dry N prep | - | - | -
hot water bottle | tableware/flasks | one bottle | other plastic | 20 5 32 .4 | 2 0 0 | dry N hob | - | t | -
knife; cook's knife; cooks knife; carving knife; paring knife; vegetable knife | tools/knives | one knife | tool metal | 5 33 3 .2 | 7 0 .3 | dry N prep | - | hs | -
table knives; steak knives; butter knives | tools/cutlery | set of 6 | tool metal | 8 24 4 .4 | 14 0 .8 | dry N table | - | - | -
forks; table forks; cake forks | tools/cutlery | set of 6 | tool metal | 8 20 4 .3 | 14 0 .8 | dry N table | - | - | -
teaspoons; tablespoons; dessert spoons; serving spoons; soup spoons | tools/cutlery | set of 6 | tool metal | 8 20 4 .3 | 21 0 .8 | dry N table | - | - | -
easy-grip cutlery; adapted cutlery; thick-handled cutlery; spork | tools/cutlery | set of 3 | tool plastic | 10 22 4 .3 | 21 0 .7 | dry N table | - | - | -
knife sharpener; sharpening steel | tools/knives | one tool | tool metal | 6 28 5 .3 | .2 0 .4 | dry N prep | - | s | -
mandolin; slicer; vegetable chopper; spiraliser | tools/cutters | one tool | tool plastic | 14 34 8 .6 | .3 0 .4 | dry N prep | - | hs | -
grater; box grater; cheese grater; zester; microplane | tools/cutters | one tool | tool metal | 11 9 24 .3 | 2 0 .4 | dry N prep | - | s | -
pizza cutter; pizza wheel; pastry cutters; biscuit cutters | tools/cutters | set of 3 | tool metal | 12 14 6 .2 | .2 0 .6 | dry N prep | - | s | -
apple corer; cherry stoner; melon baller; egg slicer | tools/cutters | one tool | tool metal | 9 18 4 .12 | .5 0 .4 | dry N prep | - | s | -
garlic press; potato ricer; lemon squeezer; nutcracker | tools/pressing tools | one tool | tool metal | 8 20 5 .3 | 2 0 .4 | dry N prep | - | - | -
potato masher; masher | tools/pressing tools | one tool | tool metal | 9 28 9 .25 | 2 0 .4 | dry N hob | - | - | -
pestle and mortar; mortar | tools/pressing tools | one set | bowl ceramic | 14 14 12 1.8 | .2 0 .4 | dry N prep | - | g | -
rolling pin; pastry board | tools/baking tools | one pin | tool wood | 45 6 6 .6 | .3 0 .4 | dry N prep | - | - | -
pastry brush; silicone spatula; rubber spatula; palette knife | tools/baking tools | set of 3 | tool plastic | 8 28 4 .2 | 2 0 .3 | dry N prep | - | - | -
piping bag; icing nozzles; cake turntable | tools/baking tools | one set | tool plastic | 14 24 6 .2 | .1 0 .5 | dry N prep | - | - | -
flour dredger; sugar shaker; flour shaker | tools/baking tools | one shaker | canister metal | 8 8 13 .2 | .5 0 .5 | dry N prep | - | - | -
whisk; balloon whisk | tools/stirring tools | one whisk | tool metal | 7 28 7 .15 | 2 0 .3 | dry N prep | - | - | -
tongs; kitchen tongs; spaghetti server | tools/stirring tools | one pair | tool metal | 6 30 5 .2 | 2 0 .4 | dry N hob | - | - | -
fish slice; turner; slotted spoon; skimmer | tools/stirring tools | one tool | tool metal | 9 34 5 .2 | 4 0 .3 | dry N hob | - | - | -
corkscrew; bottle opener; wine opener | tools/openers | one tool | tool metal | 6 17 4 .15 | 1 0 .3 | dry N prep | - | s | -
jar opener; ring pull opener; lid gripper; non-slip opener | tools/openers | one tool | tool plastic | 12 18 4 .12 | 5 0 .1 | dry N prep | - | - | -
funnel; egg timer; tea strainer; tea infuser | tools/small tools | one tool | tool plastic | 12 14 12 .08 | 3 0 .2 | dry N prep | - | - | -
spoon rest; utensil pot; knife block; knife rack; cutlery tray | tools/small tools | one pot | canister ceramic | 14 14 17 .9 | 14 0 .2 | dry N hob | - | g | -
chopping mat; non-slip chopping board; adapted chopping board; spike board | tools/boards | one board | other plastic | 3 26 36 .6 | 5 0 .1 | dry N prep | - | - | -
bread board; cheese board; wooden board | tools/boards | one board | other wood | 3 25 35 1.1 | 7 0 .1 | dry N prep | - | - | -
hammer; screwdriver; pliers; tape measure; tool kit | tools/household tools | one set | box plastic | 28 18 10 1.8 | .1 0 .6 | dry N entry | - | s | -
sewing kit; needles; pins | tools/household tools | box 1 set | box plastic | 16 11 4 .15 | .1 0 .5 | dry N entry | - | hs | -
cookery book; recipe book; recipe cards; notebook; pens | household/odds | row of 4 | other paper | 12 22 28 3 | 1 0 0 | dry N prep | - | - | -
vase; vases; flower pot; plant pots | household/odds | one vase | other ceramic | 15 15 25 1 | .2 0 .2 | dry N entry | - | g | -
washing-up rack; dish rack; draining rack; drainer | household/bowls and buckets | one rack | other metal | 42 32 14 1 | 14 0 .4 | dry N sink | - | - | -
kitchen bin; pedal bin; food caddy; recycling box | household/bowls and buckets | one bin | other plastic | 30 28 50 2.5 | 28 0 .1 | dry N sink | - | - | -
step stool; kitchen steps; perching stool; trolley | household/odds | one stool | other metal | 40 45 55 4 | 3 0 .2 | dry N entry | - | - | -
)";
}

} // namespace model::tables
