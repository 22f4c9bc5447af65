// SPDX-License-Identifier: MIT
#include "read/currency.hpp"
#include "read/file.hpp"
#include "read/read.hpp"

#include <algorithm>

namespace pelt::read {
namespace {

constexpr Um usual_least_margin = 15 * um_per_mm;
constexpr Um eighth_of_an_inch = 3'175;

class FilmReader {
public:
    explicit FilmReader(Context& context) : context_(context) {}

    Film read(const Fields& file, const Place& place) {
        film_.place = place;
        if (const auto unit = file.choice("units"))
            context_.unit = unit_named(choices_of(*find_key(In::film, "units"))[*unit]).value();
        film_.name = file.text("film").value_or("");
        film_.demonstration = file.yes_no("demonstration").value_or(false);
        if (const auto kind = file.choice("kind"))
            film_.kind = static_cast<FilmKind>(*kind);
        read_metal(file);
        read_roll(file);
        if (const auto direction = file.choice("direction"))
            film_.direction = static_cast<Direction>(*direction);
        read_stretch(file);
        read_allowances(file);
        read_sold(file);
        return std::move(film_);
    }

private:
    void read_metal(const Fields& file) {
        constexpr HoldsMetal said[] = {HoldsMetal::yes, HoldsMetal::no, HoldsMetal::unknown};
        if (const auto metal = file.choice("holds metal"))
            film_.holds_metal = said[*metal];
    }

    void read_roll(const Fields& file) {
        const auto roll = file.map("roll");
        if (!roll)
            return;
        if (const auto width = roll->length("width")) {
            film_.width = width->length.floor_um();
            in_inches_ = width->unit == Unit::in || width->unit == Unit::ft;
        }
        film_.trim = roll->ceil_um("trim").value_or(0);
        if (const auto length = roll->length("length"))
            film_.roll_length = length->length.floor_um();
        if (film_.width > 0 && film_.usable_width() < um_per_mm)
            context_.fault(roll->entry("trim")->place,
                           "the trim leaves nothing of the roll's width",
                           "it is what is not used along each edge");
    }

    /// One figure stands for both limits.
    void read_stretch(const Fields& file) {
        const Entry* entry = file.entry("stretch");
        if (entry == nullptr)
            return;
        if (entry->value.kind == Node::Kind::scalar) {
            film_.stretch_edge_percent = percent_value(entry->value, *find_key(In::stretch, "edge"),
                                                       "stretch", entry->place, context_);
            film_.stretch_panel_percent = film_.stretch_edge_percent;
        } else if (const auto stretch = file.map("stretch")) {
            film_.stretch_edge_percent = stretch->percent("edge");
            film_.stretch_panel_percent = stretch->percent("panel");
        }
    }

    void read_allowances(const Fields& file) {
        Allowances& own = film_.allowances;
        own.ruler = in_inches_ ? eighth_of_an_inch : um_per_mm;
        const auto fields = file.map("allowances");
        if (!fields)
            return;
        own.wrap = fields->ceil_um("wrap");
        own.bleed = fields->ceil_um("bleed").value_or(0);
        own.handling = read_handling(*fields, context_).value_or(Handling{});
        own.overlap = fields->ceil_um("overlap").value_or(0);
        own.gap = fields->ceil_um("gap").value_or(0);
        own.flush = fields->ceil_um("flush").value_or(0);
        own.ruler = fields->ceil_um("ruler").value_or(own.ruler);
    }

    void read_sold(const Fields& file) {
        film_.currency = file.has("currency") ? read_currency(file) : "";
        film_.money_digits = minor_digits(film_.currency);
        if (!file.has("sold"))
            return;
        const std::vector<Node>* offers = file.list("sold");
        if (offers == nullptr)
            return;
        for (const Node& item : *offers) {
            const Fields offer(item, In::offer, "an entry of 'sold'", item.place, context_);
            const auto by = offer.length("by");
            const auto price = offer.money("price");
            if (!by || !price)
                continue;
            film_.sold.push_back({by->length, price->amount});
            film_.money_digits = std::max(film_.money_digits, price->decimals);
            if (film_.roll_length && by->length > Length::from_um(*film_.roll_length))
                context_.fault(offer.entry("by")->value.place, "this length is longer than a roll",
                               "an order is one uncut length; correct it or the roll's length");
        }
    }

    std::string read_currency(const Fields& file) {
        const std::string text = file.text("currency").value_or("");
        const bool capitals = text.size() == 3 && std::all_of(text.begin(), text.end(), [](char c) {
                                  return c >= 'A' && c <= 'Z';
                              });
        if (!text.empty() && !capitals)
            context_.fault(file.entry("currency")->value.place,
                           "currency " + quoted(text) + " is not three capitals",
                           "write the code of ISO 4217, such as EUR, GBP or USD");
        return text;
    }

    Context& context_;
    Film film_;
    bool in_inches_ = false;
};

} // namespace

std::optional<Handling> read_handling(const Fields& allowances, Context& context) {
    const Entry* entry = allowances.entry("handling");
    if (entry == nullptr)
        return std::nullopt;
    if (entry->value.kind == Node::Kind::scalar) {
        const auto one = length_value(entry->value, *find_key(In::handling, "want"), "handling",
                                      entry->place, context);
        const Um want = one ? one->length.ceil_um() : 0;
        return Handling{want, std::min(want, usual_least_margin)};
    }
    const auto fields = allowances.map("handling");
    if (!fields)
        return std::nullopt;
    Handling out;
    out.want = fields->ceil_um("want").value_or(0);
    out.least = fields->ceil_um("least").value_or(std::min(out.want, usual_least_margin));
    if (out.least > out.want)
        context.fault(fields->entry("least")->value.place, "'least' is more than 'want'",
                      "the margin shrinks from 'want' down to 'least'");
    return out;
}

Reading<Film> film(std::shared_ptr<const Source> source) {
    return read_file<Film>(source, FileKind::film, [&](const Node& root, Context& context) {
        const Fields file(root, In::film, "the film file", root.place, context);
        return FilmReader(context).read(file, root.place);
    });
}

} // namespace pelt::read
