// SPDX-License-Identifier: MIT
#include "read/meanings.hpp"

#include <algorithm>
#include <array>

namespace pelt::read {
namespace {

struct Meaning {
    std::string_view written; ///< "width | height"
    std::string_view meant;   ///< "size"
};

constexpr auto meanings = std::to_array<Meaning>({
    {"width | height | length | w | h | dimension | dimensions | rectangle | measurement | "
     "measurements | measures",
     "size | width | length"},
    {"polygon | point | points | contour | shape | path | boundary | profile", "outline"},
    {"rise | rises | curve | curvature | curved | bulge | bow | dome | camber | arch",
     "crown | rise over spine | rise over girth"},
    {"rise over width | rise wide | bulge over width", "crown | wide"},
    {"rise over height | rise high | bulge over height", "crown | high"},
    {"spine rise | rise spine", "rise over spine"},
    {"girth rise | rise girth", "rise over girth"},
    {"girth | stations", "girths"},
    {"scan | mesh | model | 3d | obj | stl | ply", "surface"},
    {"hole | holes | cutout | cutouts | cut out | cut outs | window | windows", "openings | hole"},
    {"grain | arrow | nose | front | heading | film arrow", "forward"},
    {"rotate | rotation | turn | turns | orientation | lay", "direction"},
    {"mirror | mirrored | side | left | right | both | handed | pair", "sides"},
    {"quantity | qty | number | amount | copies | pieces | how many | times", "count"},
    {"type | kind | what | category", "is | kind | body"},
    {"position | face | location | where | place", "lies | at"},
    {"optional | option", "extra"},
    {"seams | split | splits | joint | joints | join | seam line", "seam lines | seam"},
    {"recess | relief | reliefs", "recesses | depth"},
    {"inlay | inserts | insert", "inlays"},
    {"tucks | fold | folds | turn in | hem | return | turnover | overwrap | wrap around | edge wrap",
     "tuck | edges"},
    {"edge | border | borders | rim", "edges | trim | edge"},
    {"short | setback | end short | distance", "stop"},
    {"part | covered by | under | hardware part", "behind"},
    {"sensor | sensors | lamp | plate | camera | radar | aerial | antenna | no film | do not cover",
     "keep clear"},
    {"spoiled | spoilt | spoilage | remake | remakes | reject", "redo"},
    {"accuracy | error | precision | uncertainty", "tolerance"},
    {"batch | lot", "batch free | batch"},
    {"margins | grip | handling margin | trim margin", "margin"},
    {"gaps | distance between | clearance", "spacing"},
    {"bleeds | overrun", "bleed"},
    {"overlaps | lap | seam overlap", "overlap"},
    {"parts | fittings | trim parts | removals", "hardware"},
    {"time | minute | duration | hours", "minutes"},
    {"tools", "tool"},
    {"before | needs | requires | depends | order", "after"},
    {"panels | panel | for | belongs | belongs to", "with | panels"},
    {"fasteners | clip", "clips"},
    {"price | prices | cost | costs | offer | offers", "sold | price | cost"},
    {"elongation | stretchability | conformability", "stretch"},
    {"metal | metallic | chrome", "holds metal"},
    {"minimum | min", "least | low"},
    {"wanted | preferred", "want"},
    {"unit", "units"},
    {"inch | inches", "in"},
    {"foot | feet", "ft"},
    {"yard | yards", "yd"},
    {"millimetre | millimetres | millimeter | millimeters", "mm"},
    {"centimetre | centimetres | centimeter | centimeters", "cm"},
    {"metre | metres | meter | meters", "m"},
    {"demo | example | invented", "demonstration"},
    {"name | title | car | model name", "vehicle | film | name"},
    {"motorbike | bike", "motorcycle"},
    {"scooter | moped", "motor scooter"},
    {"convertible | cabriolet | cabrio | spider | spyder", "roadster"},
    {"lorry | box truck | luton", "box van"},
    {"truck | ute", "pickup | box van"},
    {"van | transporter", "small panel van | medium panel van | large panel van"},
    {"suv | crossover", "compact SUV | large SUV"},
    {"limousine", "sedan | large sedan"},
    {"kombi | station wagon | touring", "wagon"},
    {"supermini | microcar", "city car"},
});

std::vector<std::string> split(std::string_view list) {
    constexpr std::string_view joint = " | ";
    std::vector<std::string> out;
    while (!list.empty()) {
        const std::size_t end = std::min(list.find(joint), list.size());
        out.emplace_back(list.substr(0, end));
        list.remove_prefix(std::min(list.size(), end + joint.size()));
    }
    return out;
}

} // namespace

std::vector<std::string> meant_by(std::string_view word) {
    for (const Meaning& meaning : meanings) {
        const std::vector<std::string> written = split(meaning.written);
        if (std::find(written.begin(), written.end(), word) != written.end())
            return split(meaning.meant);
    }
    return {};
}

} // namespace pelt::read
