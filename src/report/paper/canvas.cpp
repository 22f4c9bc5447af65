// SPDX-License-Identifier: MIT
#include "report/paper/canvas.hpp"

#include "model/error.hpp"
#include "report/draw/looks.hpp"

#include <cairo-pdf.h>
#include <pango/pangocairo.h>

#include <cmath>
#include <map>
#include <utility>

namespace pelt::report::paper {
namespace {

constexpr double points_per_mm = 72 / 25.4;
constexpr double measured_size = 100; ///< letters are shaped in this size and scaled, so that
                                      ///< widths are in proportion

template <auto Function>
struct Release {
    template <class T>
    void operator()(T* what) const {
        Function(what);
    }
};
using Surface = std::unique_ptr<cairo_surface_t, Release<cairo_surface_destroy>>;
using Context = std::unique_ptr<cairo_t, Release<cairo_destroy>>;
using FontMap = std::unique_ptr<PangoFontMap, Release<g_object_unref>>;
using PangoContextHandle = std::unique_ptr<PangoContext, Release<g_object_unref>>;
using Layout = std::unique_ptr<PangoLayout, Release<g_object_unref>>;
using FontOptions = std::unique_ptr<cairo_font_options_t, Release<cairo_font_options_destroy>>;
using Description = std::unique_ptr<PangoFontDescription, Release<pango_font_description_free>>;
using Attributes = std::unique_ptr<PangoAttrList, Release<pango_attr_list_unref>>;

/// Fonts of its own, so that nothing is left behind when it goes.
class Typesetter {
public:
    explicit Typesetter(cairo_t* paper) : map_(pango_cairo_font_map_new()) {
        pango_cairo_font_map_set_resolution(PANGO_CAIRO_FONT_MAP(map_.get()), 72);
        context_.reset(pango_font_map_create_context(map_.get()));
        const FontOptions options(cairo_font_options_create());
        cairo_font_options_set_hint_style(options.get(), CAIRO_HINT_STYLE_NONE);
        cairo_font_options_set_hint_metrics(options.get(), CAIRO_HINT_METRICS_OFF);
        cairo_font_options_set_antialias(options.get(), CAIRO_ANTIALIAS_GRAY);
        pango_cairo_update_context(paper, context_.get());
        pango_cairo_context_set_font_options(context_.get(), options.get());
        pango_context_set_round_glyph_positions(context_.get(), FALSE);
        layout_.reset(pango_layout_new(context_.get()));
        pango_layout_set_single_paragraph_mode(layout_.get(), TRUE);
        // Every letter stays itself, so that a text is found when it is looked for.
        const Attributes attributes(pango_attr_list_new());
        pango_attr_list_insert(attributes.get(), pango_attr_font_features_new("liga=0, clig=0"));
        pango_layout_set_attributes(layout_.get(), attributes.get());
    }
    PangoLayout* layout() const { return layout_.get(); }

private:
    FontMap map_;
    PangoContextHandle context_;
    Layout layout_;
};

void set_text(PangoLayout* layout, std::string_view text, draw::Face face) {
    const Description font(pango_font_description_new());
    pango_font_description_set_family(font.get(), font_family);
    pango_font_description_set_weight(font.get(), face == draw::Face::bold ? PANGO_WEIGHT_BOLD
                                                                           : PANGO_WEIGHT_NORMAL);
    pango_font_description_set_absolute_size(font.get(), measured_size * PANGO_SCALE);
    pango_layout_set_font_description(layout, font.get());
    pango_layout_set_text(layout, text.data(), static_cast<int>(text.size()));
}

double length_of(PangoLayout* layout) {
    PangoRectangle logical;
    pango_layout_get_extents(layout, nullptr, &logical);
    return static_cast<double>(logical.width) / PANGO_SCALE / measured_size;
}

cairo_status_t append(void* bytes, const unsigned char* data, unsigned int length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<const char*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

/// Draws the marks of one page after another.
class Painter {
public:
    explicit Painter(cairo_t* context) : context_(context), typesetter_(context) {}

    void operator()(const draw::Path& path) {
        for (const draw::Ring& ring : path.rings) {
            for (const draw::Point& p : ring)
                cairo_line_to(context_, p.x, p.y);
            if (path.closed)
                cairo_close_path(context_);
            cairo_new_sub_path(context_);
        }
        finish(path.look);
    }
    void operator()(const draw::Rectangle& r) {
        cairo_rectangle(context_, r.box.x, r.box.y, r.box.width, r.box.height);
        finish(r.look);
    }
    void operator()(const draw::Circle& c) {
        cairo_new_sub_path(context_);
        cairo_arc(context_, c.middle.x, c.middle.y, c.radius, 0, 2 * M_PI);
        cairo_close_path(context_);
        finish(c.look);
    }
    void operator()(const draw::Arrow& a) {
        cairo_save(context_);
        cairo_translate(context_, a.middle.x, a.middle.y);
        cairo_rotate(context_, -a.degrees * M_PI / 180);
        cairo_scale(context_, a.length, a.length);
        constexpr double corners[][2] = {{-0.5, -0.08}, {0.12, -0.08}, {0.12, -0.26}, {0.5, 0},
                                         {0.12, 0.26},  {0.12, 0.08},  {-0.5, 0.08}};
        for (const auto& corner : corners)
            cairo_line_to(context_, corner[0], corner[1]);
        cairo_close_path(context_);
        cairo_restore(context_);
        finish(draw::Look::arrow);
    }
    void operator()(const draw::Text& t) {
        PangoLayout* layout = typesetter_.layout();
        set_text(layout, t.words, t.face);
        const double length = length_of(layout);
        const double before = t.anchor == draw::Anchor::start ? 0
                              : t.anchor == draw::Anchor::end ? length
                                                              : length / 2;
        cairo_save(context_);
        cairo_translate(context_, t.at.x, t.at.y);
        if (t.turned)
            cairo_rotate(context_, -M_PI / 2);
        cairo_scale(context_, t.size / measured_size, t.size / measured_size);
        cairo_move_to(context_, -before * measured_size, draw::capital_height / 2 * measured_size);
        cairo_set_source_rgb(context_, 0, 0, 0);
        pango_cairo_show_layout_line(context_, pango_layout_get_line_readonly(layout, 0));
        cairo_restore(context_);
        cairo_new_path(context_);
    }
    void operator()(const draw::GroupBegin&) {}
    void operator()(draw::GroupEnd) {}
    void operator()(const draw::ClipBegin& c) {
        cairo_save(context_);
        cairo_rectangle(context_, c.box.x, c.box.y, c.box.width, c.box.height);
        cairo_clip(context_);
    }
    void operator()(draw::ClipEnd) { cairo_restore(context_); }

private:
    void colour(draw::Colour c) {
        cairo_set_source_rgb(context_, ((c >> 16) & 255) / 255.0, ((c >> 8) & 255) / 255.0,
                             (c & 255) / 255.0);
    }
    void finish(draw::Look look) {
        const draw::LookRow& row = draw::row_of(look);
        cairo_set_fill_rule(context_, CAIRO_FILL_RULE_EVEN_ODD);
        if (row.fill != draw::none) {
            colour(row.fill);
            cairo_fill_preserve(context_);
        }
        if (row.stroke != draw::none) {
            colour(row.stroke);
            cairo_set_line_width(context_, row.stroke_width);
            cairo_set_line_join(context_, CAIRO_LINE_JOIN_ROUND);
            cairo_set_dash(context_, row.dashes.data(), static_cast<int>(row.dashes.size()), 0);
            cairo_stroke_preserve(context_);
        }
        cairo_new_path(context_);
    }

    cairo_t* context_;
    Typesetter typesetter_;
};

void check(cairo_status_t status) {
    if (status != CAIRO_STATUS_SUCCESS)
        throw ProgramError(std::string("drawing a page failed: ") + cairo_status_to_string(status));
}

} // namespace

struct PaperLetters::Measuring {
    Surface surface{cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, nullptr)};
    Context context{cairo_create(surface.get())};
    Typesetter typesetter{context.get()};
    std::map<std::pair<std::string, draw::Face>, double> known;
};

PaperLetters::PaperLetters() : measuring_(std::make_unique<Measuring>()) {}
PaperLetters::~PaperLetters() = default;

double PaperLetters::width_em(std::string_view text, draw::Face face) const {
    const auto [entry, fresh] = measuring_->known.try_emplace({std::string(text), face}, 0.0);
    if (fresh) {
        set_text(measuring_->typesetter.layout(), text, face);
        entry->second = length_of(measuring_->typesetter.layout());
    }
    return entry->second;
}

bool has_font() {
    const FontMap fonts(pango_cairo_font_map_new());
    PangoFontFamily** families = nullptr;
    int count = 0;
    pango_font_map_list_families(fonts.get(), &families, &count);
    bool found = false;
    for (int i = 0; i < count; ++i)
        found = found || std::string_view(pango_font_family_get_name(families[i])) == font_family;
    g_free(families);
    return found;
}

std::string to_pdf(const std::vector<draw::Picture>& pages, const std::string& title) {
    std::string bytes;
    const Surface surface(cairo_pdf_surface_create_for_stream(append, &bytes, 1, 1));
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, title.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATOR, "pelt");
    // No text is a date: the entry is then left out, where otherwise the clock would be asked.
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, "");
    const Context context(cairo_create(surface.get()));
    cairo_scale(context.get(), points_per_mm, points_per_mm);
    Painter painter(context.get());
    for (const draw::Picture& page : pages) {
        cairo_pdf_surface_set_size(surface.get(), page.width * points_per_mm,
                                   page.height * points_per_mm);
        for (const draw::Mark& mark : page.marks)
            std::visit(painter, mark);
        cairo_show_page(context.get());
    }
    check(cairo_status(context.get()));
    cairo_surface_finish(surface.get());
    check(cairo_surface_status(surface.get()));
    return bytes;
}

} // namespace pelt::report::paper
