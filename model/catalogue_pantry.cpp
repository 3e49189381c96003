#include "model/catalogue_table.h"

namespace model::tables {

std::string_view morePantry() {
    return R"(
tinned spaghetti; spaghetti hoops | tins/pasta tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .5 .15 .2 | dry F hob | gluten | - | bb 372
tinned potatoes; new potatoes tin | tins/vegetable tins | tin 560 g, 300-800 | can metal | 7.5 7.5 11 .62 | .5 .15 .3 | dry F hob | - | - | bb 372
tinned carrots | tins/vegetable tins | tin 300 g, 200-400 | can metal | 7.5 7.5 11 .37 | .5 .15 .3 | dry F hob | - | - | bb 372
mushy peas; marrowfat peas; processed peas | tins/vegetable tins | tin 300 g, 200-800 | can metal | 7.5 7.5 11 .37 | .5 .15 .2 | dry F hob | - | - | bb 372
haricot beans; white beans; navy beans | tins/bean tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .3 .1 .3 | dry F hob | - | - | bb 372
cannellini beans | tins/bean tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .3 .1 .3 | dry F hob | - | - | bb 372
black beans; black eyed beans | tins/bean tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .3 .1 .3 | dry F hob | - | - | bb 372
borlotti beans; pinto beans | tins/bean tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .2 .08 .3 | dry F hob | - | - | bb 372
mixed beans; bean salad | tins/bean tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .5 .15 .3 | dry F hob | - | - | bb 372
tinned lentils; green lentils | tins/bean tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .5 .15 .3 | dry F hob | - | - | bb 372
refried beans | tins/bean tins | tin 400 g, 200-450 | can metal | 7.5 7.5 11 .48 | .2 .08 .1 | dry F hob | - | - | bb 499
passata; sieved tomatoes | tins/tomato tins | carton 500 g, 350-1000 | box card | 9 6 14 .53 | 1 .3 .3 | dry F hob | - | - | bb 599
coconut cream; creamed coconut | tins/cooking tins | carton 200 ml, 150-500 | box card | 6.5 4.5 11 .22 | .3 .1 .3 | dry F hob | - | - | bb 601
evaporated milk | tins/milk tins | tin 410 g, 170-410 | can metal | 7.5 7.5 9 .49 | .3 .1 .4 | dry F prep | milk | m | bb 383
condensed milk | tins/milk tins | tin 397 g, 170-1000 | can metal | 7.5 7.5 8 .47 | .2 .08 .1 | dry F prep | milk | m | bb 383
tinned custard; ready custard | tins/pudding tins | tin 400 g, 150-500 | can metal | 7.5 7.5 11 .48 | .5 .2 .2 | dry F hob | milk | m | bb 372
tinned salmon; pink salmon; red salmon | tins/fish tins | tin 213 g, 100-420 | can metal | 8.5 8.5 6 .28 | .5 .2 .2 | dry F prep | fish | m | bb 619
tinned mackerel; mackerel fillets | tins/fish tins | tin 125 g, 110-200 | can metal | 10.5 6 2.5 .16 | .5 .2 .1 | dry F prep | fish ?mustard | m | bb 619
pilchards; herring tin | tins/fish tins | tin 155 g, 100-425 | can metal | 7.5 7.5 5 .2 | .3 .1 .1 | dry F prep | fish | m | bb 619
anchovies | tins/fish tins | tin 50 g, 30-100 | can metal | 10 6 2 .08 | .3 .1 .1 | dry F prep | fish | m | bb 673
tinned crab; crab meat | tins/fish tins | tin 170 g, 100-200 | can metal | 8.5 8.5 4 .22 | .1 .05 .2 | dry F prep | crustaceans | m | bb 619
corned beef | tins/meat tins | tin 340 g, 200-340 | can metal | 9 5.5 9 .39 | .5 .2 0 | dry F prep | - | - | bb 111
tinned ham | tins/meat tins | tin 200 g, 180-454 | can metal | 10 8 4 .25 | .3 .1 0 | dry F prep | - | - | bb 108
luncheon meat; chopped pork | tins/meat tins | tin 200 g, 200-340 | can metal | 9.5 5 6 .25 | .3 .1 0 | dry F prep | - | - | bb 111
stewed steak; tinned stew; minced beef tin | tins/meat tins | tin 400 g, 200-800 | can metal | 7.5 7.5 11 .48 | .5 .2 .1 | dry F hob | ?gluten ?celery | - | bb 372
tinned curry; chicken curry tin | tins/meat tins | tin 392 g, 200-400 | can metal | 7.5 7.5 11 .47 | .5 .2 .1 | dry F hob | ?gluten ?milk ?mustard | - | bb 372
hot dogs; frankfurters | tins/meat tins | tin 400 g, 180-400 | can metal | 7.5 7.5 11 .48 | .3 .1 .3 | dry F hob | ?milk ?soya | - | bb 372
pineapple; pineapple rings; pineapple chunks | tins/fruit tins | tin 432 g, 220-850 | can metal | 8.5 8.5 11 .52 | .5 .2 .4 | dry F prep | - | m | bb 373
pears tin; pear halves; tinned pears | tins/fruit tins | tin 410 g, 200-850 | can metal | 7.5 7.5 11 .49 | .5 .2 .4 | dry F prep | - | m | bb 373
mandarin segments; mandarins tin | tins/fruit tins | tin 298 g, 200-400 | can metal | 7.5 7.5 9 .36 | .5 .2 .4 | dry F prep | - | m | bb 373
prunes; prunes in juice | tins/fruit tins | tin 410 g, 200-420 | can metal | 7.5 7.5 11 .49 | 1 .2 .3 | dry F prep | - | m | bb 373
tinned rhubarb | tins/fruit tins | tin 540 g, 400-560 | can metal | 7.5 7.5 11 .6 | .2 .08 .3 | dry F prep | - | m | bb 373
fruit pie filling; pie filling; cherry pie filling | tins/fruit tins | tin 410 g, 390-800 | can metal | 7.5 7.5 11 .49 | .2 .08 .1 | dry F prep | - | m | bb 373
lentil soup; vegetable soup | tins/soup tins | tin 400 g, 200-600 | can metal | 7.5 7.5 11 .48 | 1 .3 .4 | dry F hob | celery ?milk | - | bb 372
chicken soup; cream of chicken soup | tins/soup tins | tin 400 g, 200-600 | can metal | 7.5 7.5 11 .48 | 1 .3 .4 | dry F hob | milk gluten ?celery | - | bb 372
mushroom soup | tins/soup tins | tin 400 g, 200-600 | can metal | 7.5 7.5 11 .48 | .5 .2 .4 | dry F hob | milk gluten ?celery | - | bb 372
packet soup; instant soup; cup soup | sauces/soup mixes | box 4 sachets | box card | 12 4 15 .13 | 1 .3 .5 | dry F hob | ?milk ?gluten celery | - | bb 396
cat biscuits; dog biscuits; dry cat food; dry dog food | pets/pet dry food | bag 2 kg, 0.8-15 | bag paper | 20 10 32 2 | 7 .2 .8 | dry N entry | - | m | -
bird seed; bird food | pets/pet dry food | bag 1 kg, 0.5-12.5 | bag plastic | 16 8 25 1 | 3 .1 .8 | dry N entry | ?peanuts | m | -
cat litter | pets/pet odds | bag 5 l, 3-20 | bag paper | 24 12 34 3.5 | 3 .2 .8 | dry N entry | - | m | -
strong white flour; strong flour; white bread flour | baking/flours | bag 1.5 kg, 1-3 | bag paper | 11 8 18 1.5 | .5 .05 .3 | dry F prep | gluten | m | bb 222
gram flour; chickpea flour | baking/flours | bag 1 kg, 0.5-2 | bag plastic | 12 7 17 1 | .3 .03 .3 | dry F prep | - | m | -
rye flour; spelt flour | baking/flours | bag 1 kg, 0.5-1.5 | bag paper | 10 7 16 1 | .3 .03 .3 | dry F prep | gluten | m | bb 588
coconut flour | baking/flours | bag 500 g, 250-1000 | bag plastic | 12 6 17 .5 | .1 .02 .3 | dry F prep | - | m | -
oatmeal | baking/flours | bag 1 kg, 0.5-1.5 | bag paper | 11 7 17 1 | 1 .1 .4 | dry F hob | gluten | m | bb 586
semolina | baking/puddings | box 500 g, 400-1000 | box card | 10 6 16 .53 | .3 .05 .5 | dry F hob | gluten | m | -
polenta; cornmeal | baking/flours | bag 500 g, 375-1000 | bag plastic | 11 6 16 .5 | .2 .05 .5 | dry F hob | - | m | bb 656
demerara sugar; muscovado sugar | baking/sugars | bag 500 g, 500-1000 | bag plastic | 9 6 13 .5 | 1 .08 .5 | dry F prep | - | m | bb 239
sugar cubes; sugar lumps | baking/sugars | box 500 g, 500-1000 | box card | 12 8 7 .53 | 3 .1 .7 | dry F table | - | m | bb 240
jelly; jelly cubes | baking/puddings | packet 135 g, 100-200 | packet plastic | 14 2 8 .14 | .3 .1 0 | dry F prep | - | - | bb 225
gelatine; leaf gelatine | baking/thickeners | packet 12 g, 10-25 | packet card | 11 1 8 .02 | .1 .03 .2 | dry F prep | - | m | bb 226
instant whip; blancmange; pudding mix | baking/puddings | packet 59 g, 35-200 | packet foil | 11 2 14 .07 | .3 .1 .4 | dry F prep | milk | - | bb 395
cake mix; muffin mix; scone mix | baking/mixes | box 400 g, 200-600 | box card | 14 6 20 .45 | .2 .05 .4 | dry F prep | gluten ?milk ?eggs | - | bb 215
pancake mix; batter mix; Yorkshire pudding mix | baking/mixes | packet 200 g, 125-500 | packet paper | 12 3 16 .22 | .2 .05 .3 | dry F prep | gluten ?milk ?eggs | - | bb 214
bread mix | baking/mixes | bag 500 g, 500-1000 | bag paper | 11 7 16 .5 | .2 .05 .3 | dry F prep | gluten ?milk | - | bb 215
stuffing; sage and onion stuffing; stuffing mix | baking/mixes | box 170 g, 85-300 | box card | 11 5 16 .2 | .2 .05 .4 | dry F hob | gluten | - | bb 464
breadcrumbs | baking/mixes | canister 175 g, 100-500 | canister card | 8 8 16 .22 | .3 .05 .4 | dry F prep | gluten | - | bb 643
dried apricots; apricots dried | baking/dried fruit | bag 500 g, 200-1000 | bag plastic | 13 6 18 .5 | 1 .1 .2 | dry F prep | sulphites | - | bb 379
dates; dried dates | baking/dried fruit | packet 250 g, 150-500 | packet plastic | 13 5 14 .25 | .5 .1 .1 | dry F prep | - | - | bb 379
dried cranberries; dried cherries; dried berries | baking/dried fruit | bag 150 g, 75-500 | bag plastic | 11 4 16 .15 | .5 .1 .3 | dry F prep | - | - | bb 379
mixed fruit; dried mixed fruit; mixed peel | baking/dried fruit | bag 500 g, 100-1000 | bag plastic | 12 6 17 .5 | .3 .05 .3 | dry F prep | ?sulphites | - | bb 379
desiccated coconut | baking/nuts | bag 200 g, 100-500 | bag plastic | 11 4 15 .2 | .2 .03 .3 | dry F prep | ?sulphites | m | bb 257
flaked almonds; almonds; chopped almonds | baking/nuts | bag 100 g, 100-500 | bag plastic | 10 3 14 .1 | .5 .05 .4 | dry F prep | nuts | m | bb 438
walnuts; walnut pieces | baking/nuts | bag 100 g, 100-500 | bag plastic | 11 4 15 .1 | .5 .05 .5 | dry F prep | nuts | m | bb 386
hazelnuts; chopped hazelnuts; pecans | baking/nuts | bag 100 g, 100-500 | bag plastic | 10 3 14 .1 | .3 .05 .5 | dry F prep | nuts | m | bb 386
pine nuts | baking/nuts | bag 100 g, 50-200 | bag plastic | 10 3 13 .1 | .3 .05 .4 | dry F prep | ?nuts ?peanuts | m | bb 653
sunflower seeds; pumpkin seeds; mixed seeds | baking/seeds | bag 250 g, 100-500 | bag plastic | 12 5 16 .25 | 1 .1 .6 | dry F prep | ?sesame | - | bb 608
linseed; flaxseed; chia seeds | baking/seeds | bag 250 g, 150-500 | bag plastic | 12 5 16 .25 | 2 .1 .6 | dry F prep | ?sesame | - | bb 503
sesame seeds | baking/seeds | jar 100 g, 50-300 | jar glass | 5 5 10 .2 | .3 .03 .6 | dry F prep | sesame | m | bb 613
glace cherries | baking/dried fruit | tub 200 g, 100-200 | tub plastic | 8 8 7 .23 | .2 .03 .1 | dry F prep | ?sulphites | - | bb 379
cake decorations; sprinkles; hundreds and thousands | baking/decorations | tub 60 g, 40-100 | tub plastic | 4.5 4.5 9 .08 | .1 .02 .7 | dry F prep | ?milk ?soya | - | -
food colouring | baking/flavours | bottle 38 ml, 15-50 | bottle plastic | 4 4 9 .05 | .1 .02 .3 | dry F prep | - | m | -
almond essence; peppermint essence; lemon essence | baking/flavours | bottle 38 ml, 28-60 | bottle glass | 4 4 11 .1 | .1 .02 .4 | dry F prep | ?nuts | m | bb 527
marzipan | baking/decorations | packet 500 g, 250-500 | packet plastic | 14 4 8 .5 | .1 .02 0 | dry F prep | nuts | - | -
ready to roll icing; fondant icing | baking/decorations | packet 500 g, 250-1000 | packet plastic | 14 4 8 .5 | .1 .02 0 | dry F prep | - | - | bb 224
chocolate chips; chocolate buttons | baking/chocolate | bag 100 g, 100-250 | bag plastic | 12 3 15 .1 | .3 .05 .5 | dry F prep | ?milk soya | - | bb 216
milk chocolate | snacks/chocolate | packet 180 g, 45-400 | packet foil | 16 2 8 .19 | 2 .5 .1 | dry F table | milk soya ?nuts | - | bb 216
treacle; black treacle; molasses | baking/syrups | tin 454 g, 454-700 | can metal | 8 8 9 .55 | .2 .03 .1 | dry F prep | ?sulphites | - | bb 384
cooking spray; oil spray | oils/oils | can 190 ml, 150-250 | can metal | 5 5 20 .22 | 2 .05 .2 | dry F hob | - | - | bb 229
suet; vegetable suet | baking/fats | box 240 g, 200-240 | box card | 9 5 14 .26 | .1 .03 .4 | dry F prep | gluten | - | -
arborio rice; risotto rice; pudding rice | grains/rice | bag 500 g, 500-1000 | bag plastic | 11 6 16 .5 | .5 .1 .8 | dry F hob | - | - | bb 338
microwave rice; pouch rice | grains/rice | packet 250 g, 220-280 | packet plastic | 14 3 17 .26 | 2 .7 .2 | dry F hob | - | - | -
lasagne sheets; lasagne | grains/pasta | box 500 g, 250-500 | box card | 10 5 19 .54 | .3 .08 .6 | dry F hob | gluten | - | bb 335
pasta shapes; pasta shells; farfalle; conchiglie; tagliatelle | grains/pasta | bag 500 g, 250-3000 | bag plastic | 14 8 20 .5 | 1 .2 .9 | dry F hob | gluten ?eggs | - | bb 335
soup pasta; orzo | grains/pasta | bag 500 g, 250-500 | bag plastic | 12 6 16 .5 | .3 .08 .9 | dry F hob | gluten | - | bb 335
gluten-free pasta; free from pasta | grains/pasta | bag 500 g, 250-500 | bag plastic | 14 8 20 .5 | 1 .2 .9 | dry F hob | - | m | bb 335
instant noodles; pot noodles | grains/noodles | packet 85 g, 60-120 | packet plastic | 13 4 13 .09 | 1 .5 .5 | dry F hob | gluten ?soya ?celery | - | bb 358
quinoa | grains/other grains | bag 500 g, 250-1000 | bag plastic | 11 6 15 .5 | .5 .08 .8 | dry F hob | - | - | bb 425
bulgur wheat; cracked wheat | grains/other grains | bag 500 g, 500-1000 | bag plastic | 11 6 15 .5 | .3 .06 .8 | dry F hob | gluten | - | bb 637
pearl barley; barley | grains/other grains | bag 500 g, 500-1000 | bag plastic | 11 6 15 .5 | .3 .06 .9 | dry F hob | gluten | - | bb 577
dried chickpeas | grains/pulses | bag 500 g, 500-2000 | bag plastic | 11 6 15 .5 | .3 .06 .9 | dry F hob | - | - | bb 333
dried kidney beans; dried beans; dried haricot beans | grains/pulses | bag 500 g, 500-2000 | bag plastic | 11 6 15 .5 | .3 .06 .9 | dry F hob | - | - | bb 333
soup mix; broth mix | grains/pulses | bag 500 g, 500-1000 | bag plastic | 11 6 15 .5 | .3 .06 .9 | dry F hob | gluten | - | bb 337
popping corn; popcorn kernels | snacks/popcorn | bag 500 g, 250-1000 | bag plastic | 11 6 15 .5 | .2 .05 .9 | dry F hob | - | - | bb 389
wheat biscuits; breakfast wheat biscuits; shredded wheat | breakfast/cereals | box 430 g, 215-860 | box card | 19 11 15 .48 | 7 .4 .4 | dry F prep | gluten | - | bb 374
rice cereal; puffed rice; crisped rice | breakfast/cereals | box 375 g, 200-700 | box card | 19 7 30 .43 | 4 .4 .6 | dry F prep | ?gluten | - | bb 374
bran cereal; all bran; bran sticks | breakfast/cereals | box 500 g, 375-750 | box card | 19 7 28 .56 | 5 .4 .7 | dry F prep | gluten | - | bb 374
granola; crunchy oat cereal | breakfast/cereals | bag 500 g, 400-1000 | bag plastic | 15 8 22 .51 | 4 .4 .7 | dry F prep | gluten ?nuts | - | bb 555
instant porridge; porridge sachets | breakfast/oats | box 10 sachets | box card | 13 8 14 .34 | 4 .4 .5 | dry F hob | gluten milk | - | bb 375
lemon curd | breakfast/spreads | jar 320 g, 300-400 | jar glass | 7 7 11 .52 | 1 .1 .1 | dry F prep | eggs milk | - | bb 347
blackcurrant jam; apricot jam; plum jam; blackberry jam | breakfast/spreads | jar 340 g, 227-454 | jar glass | 7 7 11 .54 | 3 .2 .1 | dry F prep | - | - | bb 347
almond butter; cashew butter; nut butter | breakfast/spreads | jar 170 g, 170-1000 | jar glass | 7 7 8 .33 | 2 .1 .1 | dry F prep | nuts ?peanuts | m | bb 466
tahini | breakfast/spreads | jar 300 g, 270-500 | jar glass | 7 7 11 .5 | .5 .05 .1 | dry F prep | sesame | m | bb 416
maple syrup; agave syrup | baking/syrups | bottle 250 ml, 150-500 | bottle glass | 6 6 17 .55 | 1 .08 .3 | dry F prep | - | - | bb 398
loose tea; leaf tea | hot drinks/tea | packet 250 g, 125-500 | packet foil | 10 6 14 .26 | 14 .2 .5 | dry F hob | - | - | bb 412
green tea | hot drinks/tea | box 80 bags | box card | 13 8 13 .2 | 7 .1 .4 | dry F hob | - | - | bb 410
decaf tea; decaffeinated tea | hot drinks/tea | box 80 bags | box card | 13 8 13 .28 | 14 .2 .4 | dry F hob | - | m | bb 410
decaf coffee; decaffeinated coffee | hot drinks/coffee | jar 100 g, 100-300 | jar glass | 8 8 14 .35 | 7 .2 .6 | dry F hob | - | m | bb 402
coffee pods; coffee capsules | hot drinks/coffee | box 10 pods | box card | 11 9 8 .12 | 7 .7 .6 | dry F hob | - | - | bb 541
coffee filters; filter papers | hot drinks/coffee | box 80 filters | box card | 13 3 17 .12 | 5 .1 .1 | dry N hob | - | - | -
malted milk drink; malt drink | hot drinks/chocolate drinks | jar 300 g, 200-500 | jar glass | 8 8 14 .55 | 5 .2 .5 | dry F hob | gluten milk | - | bb 403
coffee whitener; coffee creamer | hot drinks/milk powder | jar 200 g, 200-500 | jar plastic | 8 8 15 .25 | 7 .2 .5 | dry F hob | milk | m | bb 430
long life milk; UHT milk | cold drinks/long life milk | carton 1 l, 0.2-1 | box card | 9 6 20 1.05 | 3 .7 .5 | dry F fridge | milk | m | bb 644
cola; lemonade; fizzy drink; fizzy pop; ginger beer | cold drinks/fizzy drinks | bottle 2 l, 0.33-2 | bottle plastic | 11 11 32 2.1 | 4 .5 .4 | dry F table | - | - | bb -
cans of fizzy drink; cola cans; drink cans | cold drinks/fizzy drinks | can 330 ml, 150-500 | can metal | 6.5 6.5 12 .35 | 4 1 .5 | dry F table | - | - | bb -
tonic water; soda water; sparkling water | cold drinks/water | bottle 1 l, 0.15-2 | bottle plastic | 9 9 28 1.05 | 3 .5 .4 | dry F table | - | - | bb -
bottled water; mineral water; still water | cold drinks/water | bottle 1.5 l, 0.5-5 | bottle plastic | 9 9 31 1.55 | 7 1 .4 | dry F table | - | - | bb 413
cranberry juice; long life juice; pineapple juice | cold drinks/juice | carton 1 l, 0.2-1.5 | box card | 9 6 20 1.1 | 5 .7 .5 | dry F fridge | - | - | bb 404
tomato juice; vegetable juice | cold drinks/juice | carton 1 l, 0.2-1 | box card | 9 6 20 1.1 | 1 .2 .5 | dry F fridge | ?celery | - | bb 567
red wine; wine | cold drinks/wine and spirits | bottle 750 ml, 187-1500 | bottle glass | 8 8 31 1.3 | 1 .2 .4 | dry F table | sulphites | - | bb 462
white wine; rose wine | cold drinks/wine and spirits | bottle 750 ml, 187-1500 | bottle glass | 8 8 31 1.3 | 1 .2 .4 | dry F table | sulphites | - | bb 463
sherry; port; vermouth | cold drinks/wine and spirits | bottle 750 ml, 375-1000 | bottle glass | 8 8 31 1.3 | 1 .1 .4 | dry F table | sulphites | - | -
whisky; gin; rum; vodka; brandy; spirits | cold drinks/wine and spirits | bottle 700 ml, 350-1000 | bottle glass | 8 8 29 1.2 | 1 .05 .4 | dry F table | - | m | bb 539
beer; lager; ale; cider | cold drinks/beer | can 440 ml, 275-660 | can metal | 6.5 6.5 15 .46 | 2 1 .5 | dry F table | gluten ?sulphites | - | -
rapeseed oil; corn oil | oils/oils | bottle 1 l, 0.5-5 | bottle plastic | 8 8 28 1 | 3 .1 .4 | dry F hob | - | m | bb 520
sesame oil | oils/oils | bottle 150 ml, 100-500 | bottle glass | 5 5 20 .33 | .5 .05 .4 | dry F hob | sesame | m | bb 612
walnut oil; hazelnut oil; almond oil | oils/oils | bottle 250 ml, 100-500 | bottle glass | 6 6 20 .45 | .3 .03 .4 | dry F hob | nuts | m | bb -
peanut oil; groundnut oil; arachis oil | oils/oils | bottle 1 l, 0.5-5 | bottle plastic | 8 8 28 1 | .5 .05 .4 | dry F hob | peanuts | m | bb -
coconut oil | oils/oils | jar 300 ml, 250-1000 | jar glass | 8 8 10 .48 | 1 .05 .1 | dry F hob | - | m | bb 454
ghee | oils/fats | jar 500 g, 250-2000 | jar metal | 9 9 11 .58 | 2 .05 .1 | dry F hob | milk | m | bb 649
rice vinegar; mirin | oils/vinegars | bottle 150 ml, 150-500 | bottle glass | 5 5 18 .33 | .3 .03 .4 | dry F prep | - | m | bb 361
worcester sauce; Worcestershire sauce | sauces/table sauces | bottle 150 ml, 140-290 | bottle glass | 5 5 18 .33 | 1 .05 .4 | dry F hob | fish ?gluten | m | bb 362
fish sauce | sauces/table sauces | bottle 150 ml, 150-500 | bottle glass | 5 5 18 .33 | .5 .05 .4 | dry F hob | fish ?molluscs ?gluten | m | bb 434
oyster sauce | sauces/table sauces | bottle 150 ml, 150-500 | bottle glass | 5 5 18 .33 | .5 .05 .4 | dry F hob | molluscs ?gluten ?soya | m | bb 434
satay sauce; peanut sauce | sauces/cooking sauces | jar 200 g, 100-450 | jar glass | 7 7 10 .38 | .3 .1 .2 | dry F hob | peanuts ?soya ?gluten ?sesame | m | bb -
fish paste; crab paste; salmon paste; sandwich paste | sauces/sandwich pastes | jar 75 g, 35-150 | jar glass | 5 5 6 .17 | .5 .2 .1 | dry F prep | fish ?crustaceans ?gluten ?milk | m | bb -
miso; miso paste | sauces/cooking pastes | tub 300 g, 100-500 | tub plastic | 11 8 6 .33 | .3 .05 .1 | fridge F fridge | soya ?gluten | m | bb -
hot sauce; chilli sauce; sweet chilli sauce | sauces/table sauces | bottle 150 ml, 60-500 | bottle glass | 5 5 18 .33 | 1 .08 .3 | dry F table | - | m | bb 559
barbecue sauce; BBQ sauce | sauces/table sauces | bottle 400 g, 250-500 | bottle plastic | 7 5 19 .45 | .5 .08 .2 | dry F table | ?celery ?mustard | - | bb 340
mint sauce; mint jelly | sauces/table sauces | jar 185 g, 165-250 | jar glass | 6 6 9 .33 | .3 .05 .2 | dry F table | ?sulphites | - | bb 347
apple sauce; cranberry sauce; redcurrant jelly | sauces/table sauces | jar 270 g, 185-300 | jar glass | 7 7 10 .45 | .3 .05 .1 | dry F table | - | - | bb 370
horseradish sauce; tartare sauce | sauces/table sauces | jar 185 g, 170-250 | jar glass | 6 6 9 .33 | .3 .05 .1 | dry F table | ?milk ?eggs ?mustard sulphites | - | -
salad dressing; vinaigrette; French dressing | sauces/table sauces | bottle 250 ml, 200-500 | bottle plastic | 6 6 19 .28 | 1 .1 .3 | dry F table | ?mustard ?eggs | - | bb 625
jar of curry sauce; korma sauce; tikka masala sauce; balti sauce | sauces/cooking sauces | jar 450 g, 360-500 | jar glass | 8 8 14 .75 | .5 .2 .2 | dry F hob | ?milk ?mustard ?nuts | - | bb 359
sweet and sour sauce; stir fry sauce; black bean sauce | sauces/cooking sauces | jar 450 g, 120-500 | jar glass | 8 8 14 .75 | .5 .2 .2 | dry F hob | ?soya ?gluten | - | bb 433
white sauce; cheese sauce; lasagne sauce | sauces/cooking sauces | jar 450 g, 300-500 | jar glass | 8 8 14 .75 | .3 .1 .2 | dry F hob | milk gluten | - | bb 342
packet sauce mix; sauce mix; casserole mix | sauces/sauce mixes | packet 40 g, 25-60 | packet paper | 11 1 14 .045 | 1 .3 .4 | dry F hob | ?gluten ?milk ?celery | - | bb 358
parsley sauce mix; bread sauce mix; cheese sauce mix | sauces/sauce mixes | packet 30 g, 20-60 | packet paper | 11 1 14 .035 | .5 .2 .4 | dry F hob | milk gluten | - | bb 342
chopped garlic; lazy garlic; garlic puree; garlic paste | sauces/cooking pastes | jar 200 g, 90-300 | jar glass | 6 6 9 .35 | 2 .1 .1 | dry F hob | ?sulphites | - | bb 235
sun-dried tomatoes; sun dried tomatoes | sauces/pickles | jar 280 g, 150-300 | jar glass | 7 7 11 .47 | .3 .05 .1 | dry F prep | ?sulphites | - | bb 397
capers | sauces/pickles | jar 190 g, 60-200 | jar glass | 5 5 12 .32 | .2 .03 .2 | dry F prep | ?sulphites | - | bb 614
pickled onions; pickled eggs; silverskin onions | sauces/pickles | jar 440 g, 300-700 | jar glass | 8 8 13 .75 | .5 .08 .4 | dry F table | sulphites ?gluten | - | bb 353
pickled beetroot; pickled red cabbage; sauerkraut | sauces/pickles | jar 340 g, 300-700 | jar glass | 7.5 7.5 12 .6 | 1 .15 .3 | dry F table | ?sulphites | - | bb 633
mango chutney; lime pickle | sauces/pickles | jar 360 g, 200-400 | jar glass | 7.5 7.5 11 .57 | .5 .05 .1 | dry F table | ?mustard | - | bb 341
chicken stock cubes; beef stock cubes; vegetable stock cubes | sauces/stock | box 8 cubes | box card | 7 4 6 .09 | 1 .2 .5 | dry F hob | celery ?gluten | m | bb 396
bouillon powder; stock powder | sauces/stock | tub 150 g, 85-500 | tub plastic | 7 7 10 .18 | 2 .1 .5 | dry F hob | celery | m | bb 672
gravy powder; browning | sauces/stock | box 200 g, 150-400 | box card | 8 6 12 .23 | 1 .1 .5 | dry F hob | ?gluten | m | bb 343
white pepper | seasoning/spices | jar 45 g, 25-100 | jar glass | 4.5 4.5 10 .12 | 3 .03 .5 | dry F hob | - | m | bb 238
peppercorns | seasoning/spices | jar 50 g, 35-200 | jar glass | 4.5 4.5 10 .13 | 3 .03 .8 | dry F hob | - | m | bb 470
sea salt; rock salt; cooking salt | seasoning/salt | box 350 g, 125-1500 | box card | 9 6 14 .38 | 4 .05 .8 | dry F hob | - | m | bb 468
low salt; salt substitute | seasoning/salt | canister 350 g, 200-350 | canister plastic | 6 6 14 .38 | 5 .05 .7 | dry F hob | - | m | bb 468
garam masala | seasoning/spices | jar 40 g, 30-400 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F hob | ?mustard | m | bb 598
coriander; ground coriander | seasoning/spices | jar 35 g, 25-400 | jar glass | 4.5 4.5 10 .11 | .5 .03 .4 | dry F hob | - | m | bb 238
cloves; whole cloves | seasoning/spices | jar 25 g, 15-100 | jar glass | 4.5 4.5 10 .1 | .1 .02 .7 | dry F prep | - | m | bb 237
mixed spice; allspice; five spice | seasoning/spices | jar 35 g, 25-100 | jar glass | 4.5 4.5 10 .11 | .3 .02 .4 | dry F prep | - | m | bb 233
cardamom; star anise; cinnamon sticks | seasoning/spices | jar 20 g, 10-100 | jar glass | 4.5 4.5 10 .1 | .2 .02 .6 | dry F hob | - | - | bb 237
mustard seeds | seasoning/spices | jar 60 g, 40-100 | jar glass | 4.5 4.5 10 .14 | .2 .02 .7 | dry F hob | mustard | m | bb 237
mustard powder | seasoning/spices | tin 57 g, 57-113 | can metal | 6 4 9 .09 | .3 .02 .4 | dry F hob | mustard | m | bb 684
fennel seeds; caraway seeds; cumin seeds | seasoning/spices | jar 35 g, 25-100 | jar glass | 4.5 4.5 10 .11 | .2 .02 .6 | dry F hob | - | m | bb 237
onion powder; onion granules | seasoning/spices | jar 60 g, 45-200 | jar glass | 4.5 4.5 10 .14 | .3 .02 .5 | dry F hob | - | m | bb 475
smoked paprika | seasoning/spices | jar 40 g, 35-75 | jar glass | 4.5 4.5 10 .12 | .5 .03 .4 | dry F hob | - | m | bb 238
saffron | seasoning/spices | box 0.4 g, 0.4-2 | box card | 8 1 10 .01 | .1 .01 .1 | dry F hob | - | - | bb 237
celery salt; garlic salt; seasoning salt | seasoning/salt | jar 75 g, 50-300 | jar glass | 4.5 4.5 10 .15 | .3 .02 .7 | dry F hob | ?celery | m | bb 233
all purpose seasoning; jerk seasoning; chicken seasoning | seasoning/spices | jar 100 g, 50-500 | jar plastic | 5 5 11 .12 | 2 .05 .5 | dry F hob | ?celery ?mustard | m | bb 233
basil; dried basil | seasoning/herbs | jar 14 g, 10-100 | jar glass | 4.5 4.5 10 .09 | 1 .03 .4 | dry F hob | - | - | bb 508
parsley; dried parsley | seasoning/herbs | jar 10 g, 8-50 | jar glass | 4.5 4.5 10 .09 | 1 .03 .3 | dry F hob | - | - | bb 236
rosemary; sage; mint dried; dried mint; dill | seasoning/herbs | jar 15 g, 8-50 | jar glass | 4.5 4.5 10 .09 | .5 .02 .4 | dry F hob | - | - | bb 236
oatcakes | snacks/crackers | box 300 g, 200-400 | box card | 8 8 21 .33 | 3 .2 .4 | dry F table | gluten | - | bb 377
rice cakes; corn cakes | snacks/crackers | packet 130 g, 100-150 | packet plastic | 10 10 24 .13 | 2 .3 .3 | dry F table | ?milk ?soya | - | bb 377
bread sticks | snacks/crackers | box 125 g, 100-200 | box card | 10 4 22 .15 | 1 .2 .5 | dry F table | gluten ?sesame | - | bb 377
rich tea biscuits; tea biscuits; shortbread; ginger biscuits; custard creams | snacks/biscuits | packet 300 g, 150-400 | packet plastic | 6.5 6.5 20 .31 | 5 .4 .3 | dry F table | gluten ?milk | - | bb 200
chocolate biscuits; chocolate digestives | snacks/biscuits | packet 300 g, 150-450 | packet plastic | 7 7 18 .31 | 5 .4 .3 | dry F table | gluten milk soya ?nuts | - | bb 200
gluten-free biscuits; free from biscuits | snacks/biscuits | packet 160 g, 130-200 | packet plastic | 7 6 17 .17 | 3 .4 .3 | dry F table | ?milk ?nuts | m | bb 200
cake; fruit cake; sponge cake; cakes | bakery/cakes | packet 400 g, 150-800 | box card | 20 10 10 .45 | 2 .5 .1 | dry F table | gluten eggs milk ?nuts | - | bb 197
malt loaf; tea loaf | bakery/cakes | packet 260 g, 200-400 | packet plastic | 17 6 6 .27 | 1 .2 0 | dry F table | gluten | - | bb 197
muffins; cupcakes; fairy cakes | bakery/cakes | packet 300 g, 150-600 | packet plastic | 22 15 8 .32 | 1 .3 .1 | dry F table | gluten eggs milk | - | bb 452
doughnuts; Danish pastries; croissants | bakery/cakes | packet 300 g, 100-500 | packet plastic | 24 16 8 .32 | 1 .5 0 | dry F table | gluten eggs milk | - | bb 202
crumpets; pikelets; English muffins | bakery/bread | packet 330 g, 200-500 | packet plastic | 20 10 10 .34 | 2 .3 0 | dry F prep | gluten | - | bb 195
bread rolls; rolls; baps; burger buns | bakery/bread | bag 6 rolls | bag plastic | 26 18 8 .4 | 3 .7 0 | dry F prep | gluten | - | bb 195
wholemeal bread; brown bread; rye bread; granary bread; seeded bread | bakery/bread | bag 800 g, 400-800 | bag plastic | 12 12 26 .8 | 10 1 0 | dry F prep | gluten ?sesame | - | bb 461
pitta bread; naan bread; flatbread; chapatis | bakery/bread | packet 350 g, 150-600 | packet plastic | 22 4 20 .36 | 1 .3 0 | dry F prep | gluten ?milk | - | bb 195
gluten-free bread; free from bread | bakery/bread | bag 400 g, 300-550 | bag plastic | 11 11 18 .42 | 7 1 0 | dry F prep | ?eggs | m | bb 195
bagels | bakery/bread | bag 5 bagels | bag plastic | 22 12 12 .45 | 1 .3 0 | dry F prep | gluten | - | bb 449
taco shells; tortilla chips; nachos | snacks/crisps | bag 200 g, 100-450 | bag foil | 20 9 28 .21 | .5 .2 .7 | dry F table | ?milk | - | bb 392
salted peanuts; peanuts; dry roasted peanuts | snacks/nuts | bag 200 g, 50-500 | bag foil | 13 4 18 .2 | 1 .2 .6 | dry F table | peanuts ?nuts | m | bb 616
cashew nuts; pistachios; brazil nuts | snacks/nuts | bag 150 g, 50-500 | bag foil | 12 4 17 .15 | 1 .2 .6 | dry F table | nuts ?peanuts | m | bb 616
pretzels; savoury snacks | snacks/crisps | bag 175 g, 40-300 | bag foil | 18 7 24 .18 | .5 .2 .7 | dry F table | gluten | - | bb 394
popcorn | snacks/popcorn | bag 100 g, 25-200 | bag foil | 19 8 26 .11 | .5 .2 .5 | dry F table | ?milk | - | bb 390
sweets; mints; candy; candies; boiled sweets; toffees; wine gums | snacks/sweets | bag 200 g, 50-500 | bag plastic | 14 5 18 .2 | 3 .3 .6 | dry F table | ?milk ?soya | - | -
marshmallows | snacks/sweets | bag 150 g, 100-300 | bag plastic | 15 8 20 .15 | .2 .05 .1 | dry F table | - | - | bb 381
)";
}

} // namespace model::tables
