<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US" sourcelanguage="en_GB">
<context>
    <name>Entries</name>
    <message>
        <source>Base cupboard</source>
        <translation>Base cabinet</translation>
    </message>
    <message>
        <source>Cooker</source>
        <translation>Stove</translation>
    </message>
    <message>
        <source>Larder</source>
        <translation>Pantry</translation>
    </message>
    <message>
        <source>Tin</source>
        <translation>Can</translation>
    </message>
    <message>
        <source>Wall cupboard</source>
        <translation>Wall cabinet</translation>
    </message>
    <message>
        <source>Worktop</source>
        <translation>Counter</translation>
    </message>
    <message>
        <source>Worktop where food is prepared</source>
        <translation>Counter where food is prepared</translation>
    </message>
</context>
<context>
    <name>app::SettingsViewModel</name>
    <message>
        <source>Colours</source>
        <translation>Colors</translation>
    </message>
    <message>
        <source>Own colours</source>
        <translation>Own colors</translation>
    </message>
    <message>
        <source>Measures are kept as you type them, in centimetres or inches.</source>
        <translation>Measures are kept as you type them, in centimeters or inches.</translation>
    </message>
</context>
<context>
    <name>app::LegiblePage</name>
    <message>
        <source>Colours of the labels</source>
        <translation>Colors of the labels</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>grey on white</source>
        <translation>gray on white</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>One line an appliance: oven: off, 180, 200. With more than one control: cooker: ring: off, 3; oven: off, 180.
{correct} or Return changes the one in hand, {readBack} reads all of them.</source>
        <translation>One line an appliance: oven: off, 180, 200. With more than one control: stove: ring: off, 3; oven: off, 180.
{correct} or Return changes the one in hand, {readBack} reads all of them.</translation>
    </message>
    <message>
        <source>Colours, text size and keys. An empty key is switched off.</source>
        <translation>Colors, text size and keys. An empty key is switched off.</translation>
    </message>
    <message>
        <source>Choose the finger first: each finger of each hand has results of its own.
Type what was felt: the marking of the lightest filament, millimetres of two points.
A test that was not done: not tested, and why.</source>
        <translation>Choose the finger first: each finger of each hand has results of its own.
Type what was felt: the marking of the lightest filament, millimeters of two points.
A test that was not done: not tested, and why.</translation>
    </message>
</context>
<context>
    <name>app::KitchenPage</name>
    <message>
        <source>For example larder 50 cm 4 shelves, worktop, corner, wall cupboard left of the cooker 2 shelves</source>
        <translation>For example pantry 20 in 4 shelves, counter, corner, wall cabinet left of the stove 2 shelves</translation>
    </message>
    <message>
        <source>For example wall cupboard left of the cooker</source>
        <translation>For example wall cabinet left of the stove</translation>
    </message>
    <message>
        <source>The unit needs a name, for example wall cupboard left of the cooker.</source>
        <translation>The unit needs a name, for example wall cabinet left of the stove.</translation>
    </message>
    <message>
        <source>This cannot be split: it is a worktop, or its clear height is not known, or less than 12 cm.</source>
        <translation>This cannot be split: it is a counter, or its clear height is not known, or less than 12 cm.</translation>
    </message>
</context>
<context>
    <name>app::AppliancesPage</name>
    <message>
        <source>For example oven: off, 180, 200; or cooker: ring: off, 3; oven: off, 180</source>
        <translation>For example oven: off, 180, 200; or stove: ring: off, 3; oven: off, 180</translation>
    </message>
</context>
<context>
    <name>app::ShellViewModel</name>
    <message>
        <source>Not a colour: %1. Try navy, cream or #10203A.</source>
        <translation>Not a color: %1. Try navy, cream or #10203A.</translation>
    </message>
</context>
<context>
    <name>app::ReadingPage</name>
    <message>
        <source>Sheet written to %1. Print it at full size: its ruler must be 100 millimetres long.</source>
        <translation>Sheet written to %1. Print it at full size: its ruler must be 100 millimeters long.</translation>
    </message>
</context>
<context>
    <name>app::AppShell</name>
    <message>
        <source>text size, colours, keys</source>
        <translation>text size, colors, keys</translation>
    </message>
</context>
<context>
    <name>Sentence</name>
    <message>
        <source>more than one place is called {1}; name its unit too, for example larder, top shelf</source>
        <translation>more than one place is called {1}; name its unit too, for example pantry, top shelf</translation>
    </message>
</context>
</TS>
