// SPDX-License-Identifier: MIT
#include "read/panel_form.hpp"

#include "read/outline.hpp"
#include "read/suggest.hpp"

#include <string>
#include <vector>

namespace pelt::read {
namespace {

class FormReader {
public:
    FormReader(const Fields& fields, Panel& panel, Context& context)
        : fields_(fields), panel_(panel), context_(context) {}

    void run() {
        if (!fields_.is_map())
            return;
        const std::vector<std::string> forms = forms_there();
        if (forms.size() == 1)
            read(forms.front());
        else if (forms.empty())
            context_.fault(panel_.place, "it has no outline, size or girths",
                           "say what it measures, such as size: [900, 400]");
        else
            context_.fault(fields_.entry(forms[1])->place,
                           "it has " + listed(forms, "and") + " at once",
                           "keep the one that was measured");
        read_girth_edges(forms);
        read_crown();
    }

private:
    std::vector<std::string> forms_there() const {
        std::vector<std::string> out;
        for (const char* form : {"outline", "size", "girths"})
            if (fields_.has(form))
                out.emplace_back(form);
        return out;
    }

    void read(const std::string& form) {
        const Entry& entry = *fields_.entry(form);
        if (form == "girths") {
            read_girths();
        } else if (form == "size") {
            if (const auto size = fields_.point("size"))
                panel_.form = rectangle_form(*size, entry.place);
        } else if (auto outline = read_outline(entry, *find_key(In::panel, "outline"), context_)) {
            panel_.form = std::move(*outline);
        }
    }

    void read_girths() {
        const std::vector<Node>* stations = fields_.list("girths");
        if (stations == nullptr)
            return;
        GirthsForm form;
        for (const Node& item : *stations) {
            const std::string label = "station " + std::to_string(form.stations.size() + 1);
            const Fields station(item, In::station, label, item.place, context_);
            const auto at = station.mm("at");
            const auto up = station.mm("up");
            const auto down = station.mm("down");
            if (at && up && down)
                form.stations.push_back({*at, *up, *down, item.place});
        }
        if (form.stations.size() == stations->size())
            check_stations(form);
        panel_.form = std::move(form);
    }

    void check_stations(const GirthsForm& form) {
        if (form.stations.size() < 2)
            context_.fault(form.stations.front().place, "'girths' has one station",
                           "give two at least: one at each end");
        for (std::size_t i = 1; i < form.stations.size(); ++i)
            if (!(form.stations[i].at_mm > form.stations[i - 1].at_mm))
                context_.fault(form.stations[i].place,
                               "station " + std::to_string(i + 1) +
                                   " does not lie beyond the one before it",
                               "'at' rises from station to station along the spine");
        for (std::size_t i = 1; i + 1 < form.stations.size(); ++i)
            if (form.stations[i].up_mm + form.stations[i].down_mm <= 0)
                context_.fault(form.stations[i].place,
                               "the panel has no height at station " + std::to_string(i + 1),
                               "only the first and the last may come to a point");
    }

    void read_girth_edges(const std::vector<std::string>& forms) {
        const Entry* entry = fields_.entry("through stations");
        const auto chosen = fields_.choice("through stations");
        if (auto* girths = std::get_if<GirthsForm>(&panel_.form))
            girths->smooth = chosen == std::size_t{1};
        else if (entry != nullptr && forms.size() == 1)
            context_.fault(entry->place, "'through stations' is for panels with girths",
                           "take it out, or measure the panel as girths");
    }

    void read_crown() {
        const auto measured = fields_.choice("measured");
        const Entry* entry = fields_.entry("crown");
        if (entry == nullptr) {
            if (measured)
                context_.fault(fields_.entry("measured")->place, "'measured' is without a crown",
                               "add crown: {wide: ..., high: ...}, or take it out");
            return;
        }
        const auto crown = fields_.map("crown");
        if (fields_.has("girths")) {
            context_.fault(entry->place, "a crown goes with an outline or a size, not with girths",
                           "girths are measured over the surface already");
            return;
        }
        if (!crown)
            return;
        if (!crown->has("wide") && !crown->has("high"))
            context_.fault(entry->place, "'crown' says neither how wide nor how high it rises",
                           "write {wide: RISE OVER THE WIDTH, high: RISE OVER THE HEIGHT}");
        panel_.crown = Crown{crown->mm("wide").value_or(0), crown->mm("high").value_or(0),
                             measured == std::size_t{1}};
    }

    const Fields& fields_;
    Panel& panel_;
    Context& context_;
};

} // namespace

void read_form(const Fields& fields, Panel& panel, Context& context) {
    FormReader(fields, panel, context).run();
}

} // namespace pelt::read
