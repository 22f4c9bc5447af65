// SPDX-License-Identifier: MIT
// Pictures on paper: PDF with its fonts embedded. The only file that knows the drawing libraries.
#pragma once

#include "report/draw/picture.hpp"

#include <memory>
#include <string>
#include <vector>

namespace pelt::report::paper {

/// The font of all paper. Other scripts come from whatever fonts the machine has.
inline constexpr const char* font_family = "DejaVu Sans";

/// Whether that font is on this machine.
bool has_font();

/// Letters as the PDF will have them.
class PaperLetters : public draw::Letters {
public:
    PaperLetters();
    ~PaperLetters() override;
    PaperLetters(const PaperLetters&) = delete;
    PaperLetters& operator=(const PaperLetters&) = delete;
    double width_em(std::string_view text, draw::Face face) const override;

private:
    struct Measuring;
    std::unique_ptr<Measuring> measuring_;
};

/// One page a picture, each as large as its picture. The bytes hold no date.
std::string to_pdf(const std::vector<draw::Picture>& pages, const std::string& title);

} // namespace pelt::report::paper
