// SPDX-License-Identifier: GPL-3.0-or-later
// One line of plain text that is cut with an ellipsis where the room ends; the whole text is then its tool tip.
#pragma once

#include <QWidget>

namespace lapwright::theme {

class ElidedLabel : public QWidget {
    Q_OBJECT

  public:
    explicit ElidedLabel(QWidget* parent = nullptr);

    void set_text(const QString& text);
    void set_alignment(Qt::Alignment alignment);
    [[nodiscard]] QString text() const { return text_; }
    [[nodiscard]] bool cut() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    void follow_room();

    QString text_;
    QString shown_;
    Qt::Alignment alignment_ = Qt::AlignLeft;
};

} // namespace lapwright::theme
