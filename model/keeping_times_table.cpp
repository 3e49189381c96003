#include "model/keeping_times.h"

// Written by tests/keeping_times.py. Data: U.S. Department of Agriculture, Food Safety and Inspection
// Service, FoodKeeper, version 128 (2018); a work of the United States Government, published as CC0 1.0. Row
// | name | subtitle | pantry | fridge | freezer | pantry after opening | fridge after opening. A star: the
// data do not say from when the time counts.
namespace model {

std::string_view keepingTimesTable() {
    return R"(
1 | Butter | - | - | 1 2 months | 6 9 months | - | -
3 | Cheese | hard such as cheddar, swiss, block parmesan | - | 6 6 months | 6 6 months | - | 3 4 weeks
9 | Cottage cheese | - | - | 2 2 weeks | Not Recommended* | - | 1 1 weeks
10 | Cream cheese | - | - | 2 2 weeks | Not Recommended* | - | -
14 | Cream | heavy | - | 10 10 days | 3 4 months | - | -
21 | Eggs | in shell | - | 3 5 weeks | Not Recommended* | - | -
26 | Margarine | - | - | 6 6 months | 12 12 months | - | -
27 | Milk | plain or flavored | - | Package use-by date* | 3 3 months | - | -
33 | Yogurt | - | - | 1 2 weeks | 1 2 months* | - | -
43 | Beef | ground | - | 1 2 days | 3 4 months | - | -
79 | Bacon | - | - | 1 1 weeks | 1 1 months | - | 1 1 weeks
117 | Chicken parts | breast halves, boneless | - | 1 2 days | 9 9 months | - | -
167 | Fish | cold smoked, vacuum pack | - | 21 30 days | 9 12 months | - | -
168 | Tofu | - | - | 1 1 weeks | 5 5 months | - | -
181 | Hummus | commercial (pasteurized, with preservatives) | - | 3 3 months | Not Recommended* | - | 7 7 days
195 | Commercial bread products | including pan breads, flat breads, rolls, and buns | 14 18 days | - | 3 5 months | - | 2 3 weeks
196 | Tortillas | flour | 3 3 months | - | 6 6 months | - | 3 3 months
200 | Cookies | crispy | 4 6 months | - | 8 12 months | - | -
212 | Baking powder | - | 6 18 months | - | - | 3 6 months | -
213 | Baking soda | - | 2 3 years | - | - | 6 6 months | -
216 | Chocolate | unsweetened and semi-sweet, solid | 1 2 years | - | - | 1 1 years | -
217 | Cocoa and cocoa mixes | - | Indefinitely | - | - | 1 1 years | -
220 | Cornstarch | - | 18 24 months | - | - | 18 18 months | -
222 | Flour | white | 6 12 months | - | - | 6 8 months | 1 1 years
223 | Flour | whole wheat | 3 6 months | - | - | - | 6 8 months
227 | Oils | olive or vegetable | 6 12 months | - | - | 3 5 months | 4 4 months
232 | Chili powder | - | 2 2 years | - | - | 2 2 years | -
233 | Seasoning blends | - | 1 2 years | - | - | 1 2 years | -
236 | Herbs | dried | 1 2 years | - | - | 1 2 years | -
238 | Spice/spices | ground | 2 3 years | - | - | 2 3 years | -
239 | Sugar | brown | Indefinitely* | - | - | 18 24 months | -
240 | Sugar | granulated | Indefinitely* | - | - | 18 24 months | -
241 | Sugar | confectioners | Indefinitely* | - | - | 18 24 months | -
242 | Sugar substitutes | - | 2 2 years | - | - | Indefinitely | -
248 | Apples | - | 3 3 weeks | 4 6 weeks | 8 8 months* | - | -
251 | Bananas | - | When Ripe* | 3 3 days* | 2 3 months* | - | -
276 | Broccoli and broccoli raab (rapini) | - | - | 3 5 days | 10 12 months | - | -
279 | Carrots, parsnips | - | - | 2 3 weeks | 10 12 months | - | -
290 | Lettuce | iceberg, romaine | - | 1 2 weeks | Not Recommended* | - | -
294 | Onions | yellow, white, red, etc. | 1 1 months | 2 2 months | 10 12 months | - | -
297 | Potatoes | - | 1 2 months | 1 2 weeks | 10 12 months* | - | -
311 | Fish | breaded | - | Not Recommended* | 18 18 months | - | -
312 | Fish | raw but headed and gutted | - | 3 4 days* | 6 6 months | - | -
313 | Frozen potato products | fries, hashbrowns, tater tots | - | Not Recommended* | 12 12 months | - | -
315 | Fruits | such as berries, melons | - | - | 10 18 months | - | -
317 | Ice cream | - | - | - | 6 6 months | - | -
325 | Shrimp, shellfish | - | - | 3 4 days* | 12 18 months | - | -
330 | Frozen entrees | prepared meals | - | Not Recommended* | 12 12 months | - | -
331 | Vegetables | - | - | 3 4 days* | 10 18 months | - | -
334 | Lentils | dried | 1 1 years | - | - | 1 1 years | -
335 | Pasta | dry, without eggs | 2 2 years | - | - | 1 1 years | -
336 | Dry egg noodles | - | 2 2 years | - | - | 1 2 months | -
337 | Peas | dried split | 1 1 years | - | - | 1 1 years | -
338 | Rice | white or wild | 2 2 years | - | - | 1 1 years | 6 6 months
339 | Rice | brown | 1 1 years | - | - | 1 1 years | 6 6 months
343 | Dry gravy mixes | - | 2 2 years | 1 2 days* | - | - | -
345 | Honey | - | 2 2 years | - | - | - | -
347 | Jams, jellies, and preserves | - | 6 18 months | - | - | - | 6 12 months
348 | Ketchup, cocktail, or chili sauce | - | 1 1 years | - | - | - | 6 6 months
350 | Mayonnaise | commercial | 3 6 months | - | - | - | 2 2 months
351 | Mustard | - | 1 2 years | - | - | - | 1 1 years
352 | Olives | black and green | 12 18 months | - | - | - | 2 2 weeks
353 | Pickles | - | 1 1 years | - | - | - | 1 3 months
354 | Pesto | jarred | - | 6 6 months | 1 1 months* | - | 3 3 days
360 | Soy sauce or teriyaki sauce | - | 3 3 years | - | - | - | 1 1 months
361 | Vinegar | - | 2 2 years | - | - | - | -
372 | Canned goods | low acid (such as meat, poultry, fish, gravy, stew, soups, beans, carrots, corn, pasta, peas, potatoes, spinach) | 2 5 years | - | - | Not Recommended | 3 4 days
373 | Canned goods | high acid (such as juices, fruit, pickles, sauerkraut, tomato soup, and foods in vinegar-based sauce) | 12 18 months | - | - | Not Recommended | 5 7 days
374 | Cereal | ready-to-eat | 6 12 months | - | - | 2 3 months | -
375 | Cereal | cook before eating (oatmeal, etc.) | 12 12 months | - | - | 6 12 months | -
377 | Crackers | - | 8 8 months | - | 3 4 months* | 1 1 months | 3 4 months
379 | Fruits, dried | raisins, apricots, mangoes, cranberries, etc. | 6 6 months | - | - | 1 1 months | 6 6 months
386 | Nuts | jars or cans | 1 1 years | - | 6 12 months* | 2 9 months | 4 6 months
387 | Peanut butter | commercial | 6 24 months | - | - | 2 3 months | -
392 | Potato chips | - | 2 2 months | - | - | 1 2 weeks | -
395 | Pudding mixes | - | 1 1 years | - | - | 3 4 months | -
396 | Soup mixes | dry bouillon | 1 1 years | - | - | 1 1 years | -
398 | Syrup | - | 1 1 years | - | - | - | 6 6 months
402 | Coffee | instant | 1 1 years | - | - | 2 3 months | -
404 | Fruit Juice in cartons, fruit drinks, punch | - | 3 3 weeks | - | - | 7 12 days | 8 12 days
408 | Soy or rice beverage | - | - | - | - | - | 7 10 days
410 | Tea | bags | 18 36 months | - | - | 6 12 months | -
421 | Soy milk | - | - | Package use-by date* | - | - | 7 10 days
427 | Almond milk | - | - | Package use-by date* | - | - | 7 10 days
428 | Rice milk | - | - | Package use-by date* | - | - | 7 10 days
438 | Almonds | no shell | 4 4 months | 8 8 months | 10 10 months | - | -
448 | Lemon juice | - | 12 18 months | - | - | - | 2 2 months
455 | Orange juice | commercially packaged carton | - | - | 8 12 months | - | 7 10 days
465 | Powdered milk | - | 3 5 years* | - | - | 3 3 months | -
468 | Salt | table, plain, or iodized | Indefinitely* | - | - | - | -
469 | Black pepper | ground, dried, commercially bottled or purchased in bulk | 2 2 years | - | - | - | -
472 | Cinnamon | ground, dried, commercially bottled or purchased in bulk | 3 4 years | - | - | - | -
473 | Cumin | ground, dried, commercially bottled or purchased in bulk, opened or unopened | 3 4 years | - | - | - | -
474 | Garlic powder | dried, commercially bottled or purchased in bulk | 3 4 years | - | - | - | -
476 | Nutmeg | ground, dried, commercially bottled or purchased in bulk | 3 4 years | - | - | - | -
501 | Tomato paste | - | 27 27 months | - | 2 3 months* | - | 5 5 days
515 | Ham | pre-packaged, luncheon/deli meat | - | 2 2 weeks | 1 2 months | - | 3 5 days
530 | Pure vanilla extract | - | 2 2 years* | - | - | 12 12 months | -
541 | Coffee | commercial ground, non-vacuum | 2 2 years | - | 6 12 months* | 2 2 weeks | 1 1 months
560 | Thai red curry paste | - | 2 2 years | - | - | - | 5 5 days
561 | Yeast | packaged | 2 2 years | - | 6 6 months* | - | 4 4 months
571 | Pizza | frozen | - | 3 4 days* | 12 12 months* | - | -
599 | Tomato sauce | spaghetti, pizza | Package use-by date* | - | - | - | 3 5 days
600 | Cherry tomatoes | - | 10 10 days* | 5 5 days* | - | - | -
602 | Coconut milk | canned | 2 5 years | - | 3 3 months* | - | 4 4 days
615 | Chocolate hazlenut spread | - | Package use-by date* | - | - | - | -
618 | Tuna | canned | 3 3 years* | - | - | - | -
619 | Seafood | canned | 1 1 years* | - | - | - | 1 2 days
637 | Bulgur | - | 6 12 months* | - | - | - | -
658 | Cereal or granola bars | - | 6 12 months* | - | - | - | -
)";
}

} // namespace model
