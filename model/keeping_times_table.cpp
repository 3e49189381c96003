#include "model/keeping_times.h"

// Written by tests/keeping_times.py. Data: U.S. Department of Agriculture, Food Safety and Inspection
// Service, FoodKeeper, version 128 (2018); a work of the United States Government, published as CC0 1.0. Row
// | name | subtitle | pantry | fridge | freezer | pantry after opening | fridge after opening. A star: the
// data do not say from when the time counts.
namespace model {

std::string_view keepingTimesTable() {
    return R"(
1 | Butter | - | - | 1 2 months | 6 9 months | - | -
2 | Buttermilk | - | - | 1 2 weeks | 3 3 months | - | -
3 | Cheese | hard such as cheddar, swiss, block parmesan | - | 6 6 months | 6 6 months | - | 3 4 weeks
4 | Cheese | parmesan; shredded or grated | - | 12 12 months | Not Recommended* | - | -
5 | Cheese | shredded; cheddar, mozzarella, etc. | - | 1 1 months | 3 4 months | - | -
6 | Cheese | processed slices | - | 3 4 weeks | Not Recommended* | - | -
7 | Cheese | soft such as brie, bel paese, goat | - | 1 2 weeks | 6 6 months | - | -
9 | Cottage cheese | - | - | 2 2 weeks | Not Recommended* | - | 1 1 weeks
10 | Cream cheese | - | - | 2 2 weeks | Not Recommended* | - | -
14 | Cream | heavy | - | 10 10 days | 3 4 months | - | -
15 | Cream | light | - | 1 1 weeks | 3 4 months | - | -
21 | Eggs | in shell | - | 3 5 weeks | Not Recommended* | - | -
25 | Kefir | fermented milk | - | 1 1 weeks | Not Recommended* | - | 1 2 days
26 | Margarine | - | - | 6 6 months | 12 12 months | - | -
27 | Milk | plain or flavored | - | Package use-by date* | 3 3 months | - | -
28 | Pudding | - | - | Package use-by date* | Not Recommended* | - | 2 2 days
30 | Whipped cream | aerosol can | - | 3 4 weeks | Not Recommended* | - | -
33 | Yogurt | - | - | 1 2 weeks | 1 2 months* | - | -
36 | Beef | round or rump roast | - | 3 5 days | 4 12 months | - | -
40 | Beef | steaks | - | 3 5 days | 4 12 months | - | -
43 | Beef | ground | - | 1 2 days | 3 4 months | - | -
51 | Lamb | chops, ribs, or loin | - | 3 5 days | 4 12 months | - | -
64 | Pork | loin chops, boneless | - | 3 5 days | 4 12 months | - | -
73 | Pork | ground | - | 1 2 days | 3 4 months | - | -
77 | Variety meats | liver, tongue, chitterlings, etc. | - | 1 2 days | 3 4 months | - | -
79 | Bacon | - | - | 1 1 weeks | 1 1 months | - | 1 1 weeks
102 | Sausage | raw bulk type or patties | - | 1 2 days | 1 2 months | - | -
108 | Ham | shelf-stable cans | 6 9 months | - | - | - | 5 14 days
111 | Meat products | canned | 5 5 years | - | - | - | 3 4 days
113 | Chicken | whole | - | 1 2 days | 12 12 months | - | -
115 | Ground turkey or chicken | - | - | 1 2 days | 3 4 months | - | -
117 | Chicken parts | breast halves, boneless | - | 1 2 days | 9 9 months | - | -
118 | Chicken parts | legs or thighs | - | 1 2 days | 9 9 months | - | -
134 | Chicken nuggets, patties | - | - | - | 1 3 months | - | -
144 | Lean fish | cod, flounder, haddock, halibut, sole, etc. | - | 1 2 days | 6 8 months | - | -
146 | Fatty fish | bluefish, catfish, mackerel, mullet, salmon, tuna, etc. | - | 1 2 days | 2 3 months | - | -
162 | Cooked shellfish | all | - | 3 4 days* | 1 3 months | - | -
167 | Fish | cold smoked, vacuum pack | - | 21 30 days | 9 12 months | - | -
168 | Tofu | - | - | 1 1 weeks | 5 5 months | - | -
180 | Guacamole | - | - | 3 4 days* | 3 4 months* | - | -
181 | Hummus | commercial (pasteurized, with preservatives) | - | 3 3 months | Not Recommended* | - | 7 7 days
185 | Main dishes or meals | hot or refrigerated | - | 3 4 days | 2 3 months* | - | -
193 | Soup, stews | - | - | 3 4 days* | 2 3 months* | - | -
195 | Commercial bread products | including pan breads, flat breads, rolls, and buns | 14 18 days | - | 3 5 months | - | 2 3 weeks
196 | Tortillas | flour | 3 3 months | - | 6 6 months | - | 3 3 months
197 | Commercial cakes and muffins | - | 3 7 days | - | 6 6 months | - | 7 10 days
198 | Cheesecake | - | - | - | 3 6 months | - | 5 7 days
200 | Cookies | crispy | 4 6 months | - | 8 12 months | - | -
202 | Doughnuts | - | 1 2 days | - | Not Recommended* | - | 2 2 days
212 | Baking powder | - | 6 18 months | - | - | 3 6 months | -
213 | Baking soda | - | 2 3 years | - | - | 6 6 months | -
214 | Biscuit or pancake mix | - | 9 9 months | - | - | - | -
215 | Cake, brownie, bread mixes | - | 12 18 months | - | - | - | -
216 | Chocolate | unsweetened and semi-sweet, solid | 1 2 years | - | - | 1 1 years | -
217 | Cocoa and cocoa mixes | - | Indefinitely | - | - | 1 1 years | -
220 | Cornstarch | - | 18 24 months | - | - | 18 18 months | -
222 | Flour | white | 6 12 months | - | - | 6 8 months | 1 1 years
223 | Flour | whole wheat | 3 6 months | - | - | - | 6 8 months
224 | Frosting or icing | - | 10 12 months | - | - | - | 2 3 weeks
225 | Gelatin | flavored | 10 12 months | - | - | 3 4 months | -
226 | Gelatin | unflavored | 3 3 years | - | - | Not Recommended | -
227 | Oils | olive or vegetable | 6 12 months | - | - | 3 5 months | 4 4 months
229 | Vegetable oil sprays | - | 2 2 years | - | - | 1 1 years | -
232 | Chili powder | - | 2 2 years | - | - | 2 2 years | -
233 | Seasoning blends | - | 1 2 years | - | - | 1 2 years | -
235 | Garlic | chopped, commercial jars | 8 12 months | - | - | - | -
236 | Herbs | dried | 1 2 years | - | - | 1 2 years | -
237 | Spice/spices | whole | 3 4 years | - | - | 3 4 years | -
238 | Spice/spices | ground | 2 3 years | - | - | 2 3 years | -
239 | Sugar | brown | Indefinitely* | - | - | 18 24 months | -
240 | Sugar | granulated | Indefinitely* | - | - | 18 24 months | -
241 | Sugar | confectioners | Indefinitely* | - | - | 18 24 months | -
242 | Sugar substitutes | - | 2 2 years | - | - | Indefinitely | -
248 | Apples | - | 3 3 weeks | 4 6 weeks | 8 8 months* | - | -
250 | Avocados | - | When Ripe* | 3 4 days* | Not Recommended* | - | -
251 | Bananas | - | When Ripe* | 3 3 days* | 2 3 months* | - | -
256 | Citrus fruit | lemon, lime, orange, grapefruit, tangerines, clementines | 10 10 days | 10 21 days | Not Recommended* | - | -
257 | Coconut | shredded | 1 1 years | - | 1 1 years* | - | 8 8 months
261 | Grapes | - | 1 1 days | 1 1 weeks | 1 1 months* | - | -
263 | Kiwi fruit | - | When Ripe* | 3 6 days* | Not Recommended* | - | -
264 | Melons | - | When Ripe* | 2 2 weeks | 1 1 months* | - | 2 4 days
265 | Papaya, mango, feijoa, passionfruit, casaha melon | - | 3 5 days | 1 1 weeks | 6 8 months* | - | -
266 | Peaches, nectarines, plums, pears, sapote | - | When Ripe* | 3 5 days* | 2 2 months* | - | -
267 | Pineapple | - | When Ripe* | 5 7 days* | 10 12 months* | - | -
271 | Asparagus | - | - | 3 4 days | 5 5 months | - | -
273 | Beans and peas | green, fava, lima, soybean, wax, snow, sugar snap | - | 3 5 days | 8 8 months | - | -
274 | Beets | - | 1 1 days | 1 2 weeks | 6 8 months | - | -
276 | Broccoli and broccoli raab (rapini) | - | - | 3 5 days | 10 12 months | - | -
277 | Brussels sprouts | - | - | 3 5 days | 10 12 months | - | -
278 | Cabbage | - | - | 1 2 weeks | 10 12 months | - | -
279 | Carrots, parsnips | - | - | 2 3 weeks | 10 12 months | - | -
280 | Cauliflower | - | - | 3 5 days | 10 12 months | - | -
281 | Celery | - | - | 1 2 weeks | 10 12 months | - | -
282 | Corn on the cob | - | - | 1 2 days | 8 8 months | - | -
283 | Cucumbers | - | - | 4 6 days | Not Recommended* | - | -
285 | Garlic | - | 1 1 months | 3 14 days | 1 1 months | - | -
286 | Ginger root | - | 2 5 days | 2 3 weeks | 6 6 months | - | -
288 | Herbs | - | - | 7 10 days | 1 2 months | - | -
289 | Leeks | - | - | 1 2 weeks | 10 12 months | - | -
290 | Lettuce | iceberg, romaine | - | 1 2 weeks | Not Recommended* | - | -
291 | Lettuce | leaf, spinach | - | 3 7 days | Not Recommended* | - | -
292 | Mushrooms | - | - | 3 7 days | 10 12 months | - | -
294 | Onions | yellow, white, red, etc. | 1 1 months | 2 2 months | 10 12 months | - | -
296 | Peppers | - | - | 4 14 days | 6 8 months | - | -
297 | Potatoes | - | 1 2 months | 1 2 weeks | 10 12 months* | - | -
303 | Squash | winter | 2 6 weeks | 1 3 months | 10 12 months | - | -
311 | Fish | breaded | - | Not Recommended* | 18 18 months | - | -
312 | Fish | raw but headed and gutted | - | 3 4 days* | 6 6 months | - | -
313 | Frozen potato products | fries, hashbrowns, tater tots | - | Not Recommended* | 12 12 months | - | -
315 | Fruits | such as berries, melons | - | - | 10 18 months | - | -
317 | Ice cream | - | - | - | 6 6 months | - | -
318 | Ice pops | - | - | - | 9 9 months | - | -
321 | Pancakes, waffles | - | - | Not Recommended* | 3 3 months | - | -
322 | Sausages | uncooked | - | 3 4 days* | 1 2 months | - | -
324 | Sherbet, sorbet | - | - | Not Recommended* | 9 9 months | - | -
325 | Shrimp, shellfish | - | - | 3 4 days* | 12 18 months | - | -
327 | Soy meat substitutes | - | - | 3 4 days* | 12 18 months | - | -
330 | Frozen entrees | prepared meals | - | Not Recommended* | 12 12 months | - | -
331 | Vegetables | - | - | 3 4 days* | 10 18 months | - | -
332 | Fresh pasta | - | - | 1 2 days* | 2 2 months* | - | -
333 | Beans | dried | 1 2 years | - | - | 1 1 years | -
334 | Lentils | dried | 1 1 years | - | - | 1 1 years | -
335 | Pasta | dry, without eggs | 2 2 years | - | - | 1 1 years | -
336 | Dry egg noodles | - | 2 2 years | - | - | 1 2 months | -
337 | Peas | dried split | 1 1 years | - | - | 1 1 years | -
338 | Rice | white or wild | 2 2 years | - | - | 1 1 years | 6 6 months
339 | Rice | brown | 1 1 years | - | - | 1 1 years | 6 6 months
340 | Barbecue sauce | bottled | 1 1 years | - | - | - | 4 4 months
341 | Chutney | - | 1 1 years | - | - | - | 1 2 months
342 | Cream sauces, milk solids | - | 6 12 months | - | - | - | -
343 | Dry gravy mixes | - | 2 2 years | 1 2 days* | - | - | -
345 | Honey | - | 2 2 years | - | - | - | -
347 | Jams, jellies, and preserves | - | 6 18 months | - | - | - | 6 12 months
348 | Ketchup, cocktail, or chili sauce | - | 1 1 years | - | - | - | 6 6 months
350 | Mayonnaise | commercial | 3 6 months | - | - | - | 2 2 months
351 | Mustard | - | 1 2 years | - | - | - | 1 1 years
352 | Olives | black and green | 12 18 months | - | - | - | 2 2 weeks
353 | Pickles | - | 1 1 years | - | - | - | 1 3 months
354 | Pesto | jarred | - | 6 6 months | 1 1 months* | - | 3 3 days
358 | Sauce mixes | nondairy (spaghetti, taco, etc.) | 2 2 years | - | - | - | -
359 | Spaghetti sauce | in jars | 18 18 months | - | - | - | 4 4 days
360 | Soy sauce or teriyaki sauce | - | 3 3 years | - | - | - | 1 1 months
361 | Vinegar | - | 2 2 years | - | - | - | -
362 | Worcestershire sauce | - | 1 1 years | - | - | - | -
370 | Applesauce | commercial | 12 18 months | - | - | Not Recommended | 7 10 days
372 | Canned goods | low acid (such as meat, poultry, fish, gravy, stew, soups, beans, carrots, corn, pasta, peas, potatoes, spinach) | 2 5 years | - | - | Not Recommended | 3 4 days
373 | Canned goods | high acid (such as juices, fruit, pickles, sauerkraut, tomato soup, and foods in vinegar-based sauce) | 12 18 months | - | - | Not Recommended | 5 7 days
374 | Cereal | ready-to-eat | 6 12 months | - | - | 2 3 months | -
375 | Cereal | cook before eating (oatmeal, etc.) | 12 12 months | - | - | 6 12 months | -
377 | Crackers | - | 8 8 months | - | 3 4 months* | 1 1 months | 3 4 months
379 | Fruits, dried | raisins, apricots, mangoes, cranberries, etc. | 6 6 months | - | - | 1 1 months | 6 6 months
381 | Marshmallows | - | 1 1 years | - | - | 1 1 months | -
383 | Milk | canned evaporated or condensed | 12 12 months | - | - | - | 4 5 days
384 | Molasses | - | 1 2 years | - | - | 6 6 months | -
386 | Nuts | jars or cans | 1 1 years | - | 6 12 months* | 2 9 months | 4 6 months
387 | Peanut butter | commercial | 6 24 months | - | - | 2 3 months | -
389 | Popcorn | dry kernels in jar | 2 2 years | - | - | 1 1 years | -
390 | Popcorn | commercially popped in bags | 2 3 months | - | - | 1 2 weeks | -
392 | Potato chips | - | 2 2 months | - | - | 1 2 weeks | -
394 | Pretzels | - | 4 9 months | - | - | 3 3 weeks | -
395 | Pudding mixes | - | 1 1 years | - | - | 3 4 months | -
396 | Soup mixes | dry bouillon | 1 1 years | - | - | 1 1 years | -
397 | Sun dried tomatoes | jar | 1 1 years | - | - | 3 6 months | 3 6 months
398 | Syrup | - | 1 1 years | - | - | - | 6 6 months
402 | Coffee | instant | 1 1 years | - | - | 2 3 months | -
403 | Diet powder mixes and drink mixes | - | 18 24 months | - | - | 1 3 months | -
404 | Fruit Juice in cartons, fruit drinks, punch | - | 3 3 weeks | - | - | 7 12 days | 8 12 days
408 | Soy or rice beverage | - | - | - | - | - | 7 10 days
410 | Tea | bags | 18 36 months | - | - | 6 12 months | -
412 | Tea | loose | 2 2 years | - | - | 6 12 months | -
413 | Water | commercially bottled | Indefinitely* | - | - | - | -
415 | Bagged greens | leaf, spinach, lettuce, etc. | - | 3 5 days* | Not Recommended* | - | 2 2 days
416 | Tahini | - | 1 1 years | - | - | - | 3 3 weeks
421 | Soy milk | - | - | Package use-by date* | - | - | 7 10 days
422 | Yams/sweet potatoes | - | 2 3 weeks | - | - | - | -
425 | Quinoa | uncooked | 2 3 years | - | - | - | -
427 | Almond milk | - | - | Package use-by date* | - | - | 7 10 days
428 | Rice milk | - | - | Package use-by date* | - | - | 7 10 days
429 | Coconut milk | - | - | Package use-by date* | - | - | 7 10 days
430 | Coffee creamer | powdered | 2 2 years | - | - | 2 3 months | -
433 | Black bean sauce | - | 18 24 months | - | - | - | 3 6 months
434 | Oyster sauce | - | 18 24 months | - | - | - | 3 6 months
438 | Almonds | no shell | 4 4 months | 8 8 months | 10 10 months | - | -
448 | Lemon juice | - | 12 18 months | - | - | - | 2 2 months
449 | Bagel | fresh baked | 1 2 days* | - | 3 3 months* | - | -
452 | Muffin | commercially packaged | 3 7 days* | - | 3 3 months* | - | -
454 | Coconut oil | - | 3 3 years* | - | - | - | -
455 | Orange juice | commercially packaged carton | - | - | 8 12 months | - | 7 10 days
461 | Whole wheat bread | commercially baked & pre-sliced | 3 5 days* | - | 3 3 months* | - | -
462 | Red wine | - | 3 5 years* | - | - | - | 1 3 days
463 | White wine | - | 1 2 years* | - | - | - | 1 3 days
464 | Dry stuffing mix | commercially packaged | 9 12 months* | - | - | - | -
465 | Powdered milk | - | 3 5 years* | - | - | 3 3 months | -
466 | Almond butter | - | 1 1 years* | - | - | - | -
468 | Salt | table, plain, or iodized | Indefinitely* | - | - | - | -
469 | Black pepper | ground, dried, commercially bottled or purchased in bulk | 2 2 years | - | - | - | -
470 | Black pepper | cracked, dried, commercially bottled or purchased in bulk | 2 3 years | - | - | - | -
472 | Cinnamon | ground, dried, commercially bottled or purchased in bulk | 3 4 years | - | - | - | -
473 | Cumin | ground, dried, commercially bottled or purchased in bulk, opened or unopened | 3 4 years | - | - | - | -
474 | Garlic powder | dried, commercially bottled or purchased in bulk | 3 4 years | - | - | - | -
475 | Onion powder | dried, commercially bottled or purchased in bulk | 3 4 years | - | - | - | -
476 | Nutmeg | ground, dried, commercially bottled or purchased in bulk | 3 4 years | - | - | - | -
481 | Strawberries | - | - | 2 3 days | 8 12 months* | - | -
482 | Raspberries | - | - | 2 3 days | 8 12 months* | - | -
499 | Refried beans | - | 3 3 years | - | - | - | 2 3 days
501 | Tomato paste | - | 27 27 months | - | 2 3 months* | - | 5 5 days
503 | Flaxseed | whole seed | 2 2 years | - | - | - | -
508 | Basil | dried | 12 12 months* | - | - | - | -
514 | Turkey | pre-packaged, luncheon/deli meat | - | 2 2 weeks | 1 2 months | - | 3 5 days
515 | Ham | pre-packaged, luncheon/deli meat | - | 2 2 weeks | 1 2 months | - | 3 5 days
516 | Salami | pre-packaged, luncheon/deli meat | - | 2 2 weeks | 1 2 months | - | 3 5 days
517 | Chicken | pre-packaged, luncheon/deli meat | - | 2 2 weeks | 1 2 months | - | 3 5 days
520 | Canola oil | - | 1 1 years | - | - | - | -
524 | Duck fat | - | - | 30 30 days* | - | - | -
527 | Almond extract | - | 2 2 years* | - | - | 12 12 months | -
530 | Pure vanilla extract | - | 2 2 years* | - | - | 12 12 months | -
539 | Hard liquors | - | Indefinitely* | - | - | - | -
541 | Coffee | commercial ground, non-vacuum | 2 2 years | - | 6 12 months* | 2 2 weeks | 1 1 months
544 | String Cheese | - | - | 5 5 months | - | - | -
545 | Vegan Cheddar Cheese | - | - | 4 4 months | - | - | 3 7 days
546 | Quark | fresh cheese | - | 7 10 days* | - | - | -
547 | Zucchini | fresh, whole | - | 1 1 weeks* | 10 10 months* | - | -
549 | Bean sprouts | - | - | 5 10 days | - | - | -
554 | Pie crust | refrigerated | - | Package use-by date* | 2 2 months* | - | -
555 | Granola | - | 6 9 months* | - | - | - | -
559 | Hot sauce | - | 6 6 months* | - | - | - | -
560 | Thai red curry paste | - | 2 2 years | - | - | - | 5 5 days
561 | Yeast | packaged | 2 2 years | - | 6 6 months* | - | 4 4 months
563 | Pate | meat | - | 7 7 days* | - | - | -
567 | Vegetable juice | shelf-stable | 18 18 months | - | - | - | -
571 | Pizza | frozen | - | 3 4 days* | 12 12 months* | - | -
577 | Barley | whole grain | 6 6 months* | - | 12 12 months* | - | -
586 | Oats | flour, meal | 2 2 months* | - | 4 4 months* | - | -
588 | Rye | flour, meal | 3 3 months* | - | 6 6 months* | - | -
598 | Garam masala | - | 1 1 years* | - | - | - | -
599 | Tomato sauce | spaghetti, pizza | Package use-by date* | - | - | - | 3 5 days
600 | Cherry tomatoes | - | 10 10 days* | 5 5 days* | - | - | -
601 | Coconut cream | canned | 2 5 years | - | 3 3 months* | - | 4 4 days
602 | Coconut milk | canned | 2 5 years | - | 3 3 months* | - | 4 4 days
603 | Coleslaw | homemade, prepared | - | 3 5 days* | - | - | -
608 | Sunflower seeds | raw, unsalted, no shell | 12 12 months* | - | - | - | -
612 | Sesame oil | - | 2 2 years | - | - | 6 6 months | -
613 | Sesame seeds | - | 5 5 years* | - | - | - | -
614 | Capers | in jar | Package use-by date* | - | - | - | -
615 | Chocolate hazlenut spread | - | Package use-by date* | - | - | - | -
616 | Roasted nuts (peanuts, cashews, almonds) | - | Package use-by date | - | - | 1 2 weeks | 4 4 weeks
618 | Tuna | canned | 3 3 years* | - | - | - | -
619 | Seafood | canned | 1 1 years* | - | - | - | 1 2 days
625 | Salad dressing | vinaigrette | 6 6 months | - | - | - | 4 4 weeks
633 | Beets | pickled | 1 1 years* | - | - | - | 1 2 months
637 | Bulgur | - | 6 12 months* | - | - | - | -
643 | Breadcrumbs | commercial | 6 6 months* | - | - | - | -
644 | Milk | shelf-stable | 6 12 months | - | - | - | 5 7 days
649 | Ghee | - | 6 8 months* | 1 2 years* | - | - | -
651 | Nutrition supplement drinks | bottled | Package use-by date* | - | - | - | -
653 | Pine nuts | - | 2 3 weeks* | 3 3 months* | 9 9 months* | - | -
656 | Polenta | shelf-stable | Package use-by date* | - | Not Recommended* | - | 5 7 days
658 | Cereal or granola bars | - | 6 12 months* | - | - | - | -
659 | Milk | ultra-pasteurized | - | 1 3 months* | - | - | 7 10 days
672 | Base | beef, vegetable | Package use-by date* | - | - | - | -
673 | Anchovies | canned | 5 5 years* | - | 2 2 months* | - | 3 4 days
684 | Mustard | dried, ground | 6 6 months* | - | 1 2 years* | - | -
)";
}

} // namespace model
