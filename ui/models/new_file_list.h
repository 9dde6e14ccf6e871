// SPDX-License-Identifier: GPL-3.0-or-later
// Recordings that nobody has opened yet, as a table: the newest first.
#pragma once

#include "core/workspace/new_files.h"
#include "ui/models/text_table.h"

namespace lapwright::models {

class NewFileList : public TextTable {
    Q_OBJECT

  public:
    enum Column { file_column, folder_column, changed_column, size_column };

    explicit NewFileList(QObject* parent = nullptr);

    void set_files(std::vector<workspace::NewFile> files);
    [[nodiscard]] const std::vector<workspace::NewFile>& files() const { return files_; }
    [[nodiscard]] QString path_at(int row) const;

  private:
    std::vector<workspace::NewFile> files_;
};

} // namespace lapwright::models
